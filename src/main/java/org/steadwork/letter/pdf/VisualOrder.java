package org.steadwork.letter.pdf;

import java.text.Bidi;
import java.util.stream.IntStream;
import org.w3c.dom.Node;

/**
 * Puts right-to-left words into the order in which they are drawn, since the layout draws every line from left to right.
 * Meant for names and single words: a right-to-left passage that wraps over two lines would have its lines exchanged.
 */
final class VisualOrder {

    private VisualOrder() {
    }

    /** Rewrites the texts below a node, the node included. */
    static void apply(Node node) {
        if (node.getNodeType() == Node.TEXT_NODE) {
            node.setNodeValue(of(node.getNodeValue()));
        }
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            apply(child);
        }
    }

    static String of(String text) {
        if (!Bidi.requiresBidi(text.toCharArray(), 0, text.length())) {
            return text;
        }
        Bidi bidi = new Bidi(text, Bidi.DIRECTION_LEFT_TO_RIGHT);
        Integer[] runs = IntStream.range(0, bidi.getRunCount()).boxed().toArray(Integer[]::new);
        byte[] levels = new byte[runs.length];
        for (int i = 0; i < levels.length; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
        }
        Bidi.reorderVisually(levels, 0, runs, 0, runs.length);
        StringBuilder visual = new StringBuilder();
        for (int run : runs) {
            String part = text.substring(bidi.getRunStart(run), bidi.getRunLimit(run));
            visual.append(bidi.getRunLevel(run) % 2 == 0 ? part : mirrored(part));
        }
        return visual.toString();
    }

    private static String mirrored(String run) {
        StringBuilder reversed = new StringBuilder(run).reverse();
        for (int i = 0; i < reversed.length(); i++) {
            int pair = "()[]".indexOf(reversed.charAt(i));
            if (pair >= 0) {
                reversed.setCharAt(i, ")(][".charAt(pair));
            }
        }
        return reversed.toString();
    }
}
