package org.steadwork.letter.pdf;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xhtmlrenderer.context.StandardAttributeResolver;
import org.xhtmlrenderer.context.StyleReference;
import org.xhtmlrenderer.context.StylesheetFactoryImpl;
import org.xhtmlrenderer.css.extend.lib.DOMTreeResolver;
import org.xhtmlrenderer.css.newmatch.CascadedStyle;
import org.xhtmlrenderer.css.newmatch.Matcher;
import org.xhtmlrenderer.css.newmatch.PageInfo;
import org.xhtmlrenderer.css.sheet.FontFaceRule;
import org.xhtmlrenderer.css.sheet.Stylesheet;
import org.xhtmlrenderer.css.sheet.StylesheetInfo;
import org.xhtmlrenderer.extend.NamespaceHandler;
import org.xhtmlrenderer.extend.UserInterface;
import org.xhtmlrenderer.layout.SharedContext;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextRenderer;

/**
 * Finds the rules of the style sheets for the elements of one letter. The sheets are parsed for one letter and lent to the
 * next, never to two at a time, since matching numbers their rules anew; nothing of a letter is kept with them.
 */
final class LetterRules extends StyleReference implements AutoCloseable {

    /** Sheets nobody uses: as many as letters were printed at the same time. */
    private static final Map<Paper, Queue<StylesheetFactoryImpl>> IDLE = new EnumMap<>(Paper.class);

    static {
        for (Paper paper : Paper.values()) {
            IDLE.put(paper, new ConcurrentLinkedQueue<>());
        }
    }

    private final LetterStyle agent;
    private final Queue<StylesheetFactoryImpl> idle;
    private final StylesheetFactoryImpl sheets;
    private Matcher matcher;

    LetterRules(LetterStyle agent, Paper paper) {
        super(agent);
        this.agent = agent;
        idle = IDLE.get(paper);
        StylesheetFactoryImpl parsed = idle.poll();
        sheets = parsed != null ? parsed
                : new StylesheetFactoryImpl(new LetterStyle(new ITextOutputDevice(ITextRenderer.DEFAULT_DOTS_PER_POINT), paper));
    }

    /** Gives the sheets back. */
    @Override
    public void close() {
        idle.add(sheets);
    }

    @Override
    public void setDocumentContext(SharedContext context, NamespaceHandler handler, Document document, UserInterface user) {
        List<Stylesheet> found = new ArrayList<>();
        handler.getDefaultStylesheet().ifPresent(sheet -> add(sheet, context.getMedia(), found));
        handler.getStylesheets(document).forEach(sheet -> add(sheet, context.getMedia(), found));
        matcher = new Matcher(new DOMTreeResolver(), new StandardAttributeResolver(handler, agent, user), sheets, found, context.getMedia());
    }

    private void add(StylesheetInfo named, String medium, List<Stylesheet> found) {
        if (!named.appliesToMedia(medium)) {
            return;
        }
        Stylesheet sheet = sheets.getStylesheet(named);
        if (sheet != null) {
            sheet.getImportRules().forEach(imported -> add(imported, medium, found));
            found.add(sheet);
        }
    }

    @Override
    public boolean isHoverStyled(Element element) {
        return matcher.isHoverStyled(element);
    }

    @Override
    public CascadedStyle getPseudoElementStyle(Node node, String pseudoElement) {
        return matcher.getPECascadedStyle(node instanceof Element element ? element : (Element) node.getParentNode(), pseudoElement);
    }

    @Override
    public CascadedStyle getCascadedStyle(Element element, boolean restyle) {
        return element == null ? CascadedStyle.emptyCascadedStyle : matcher.getCascadedStyle(element, restyle);
    }

    @Override
    public PageInfo getPageStyle(String pageName, String pseudoPage) {
        return matcher.getPageCascadedStyle(pageName, pseudoPage);
    }

    @Override
    public List<FontFaceRule> getFontFaceRules() {
        return matcher.getFontFaceRules();
    }
}
