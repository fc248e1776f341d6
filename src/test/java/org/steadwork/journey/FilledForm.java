package org.steadwork.journey;

import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;

/** One form of a page with what a person has put in so far. A field or a choice the page does not offer fails at once. */
public final class FilledForm {

    private static final String FIELDS = "input[name], select[name], textarea[name]";

    private final Guest guest;
    private final Element form;
    private final Element button;
    private final Map<String, List<String>> values = new LinkedHashMap<>();

    FilledForm(Guest guest, Element form, Element button) {
        this.guest = guest;
        this.form = form;
        this.button = button;
        readWhatStandsThere();
    }

    private void readWhatStandsThere() {
        for (Element field : everyField()) {
            if (field.hasAttr("disabled")) {
                continue;
            }
            String name = field.attr("name");
            switch (field.normalName()) {
                case "textarea" -> add(name, field.wholeText());
                case "select" -> field.select("option[selected]").forEach(option -> add(name, option.val()));
                default -> {
                    String type = field.attr("type");
                    boolean ticks = type.equals("radio") || type.equals("checkbox");
                    if (!type.equals("submit") && !type.equals("file") && (!ticks || field.hasAttr("checked"))) {
                        add(name, field.hasAttr("value") || !ticks ? field.val() : "on");
                    }
                }
            }
            if (field.normalName().equals("select") && !values.containsKey(name) && !field.hasAttr("multiple")) {
                Element first = field.selectFirst("option");
                if (first != null) {
                    add(name, first.val());
                }
            }
        }
    }

    /** The fields inside the form, and those elsewhere on the page that name it. */
    private Elements everyField() {
        Elements all = form.select(FIELDS);
        if (form.hasAttr("id")) {
            all.addAll(form.ownerDocument().select(FIELDS).stream().filter(field -> field.attr("form").equals(form.id())).toList());
        }
        return all;
    }

    private void add(String name, String value) {
        values.computeIfAbsent(name, key -> new ArrayList<>()).add(value);
    }

    /** Returns the names of the fields, in the order of the page. */
    public Set<String> fields() {
        Set<String> names = new LinkedHashSet<>();
        everyField().forEach(field -> names.add(field.attr("name")));
        return names;
    }

    /** Returns the names of the fields that do not stand inside what the selector names. */
    public Set<String> fieldsOutside(String selector) {
        Set<String> names = new LinkedHashSet<>();
        everyField().stream().filter(field -> field.closest(selector) == null).forEach(field -> names.add(field.attr("name")));
        return names;
    }

    public boolean offers(String name) {
        return !fieldsNamed(name).isEmpty();
    }

    public boolean offers(String name, String value) {
        return choices(name).contains(value);
    }

    private Elements fieldsNamed(String name) {
        Elements found = new Elements();
        everyField().stream().filter(field -> field.attr("name").equals(name)).forEach(found::add);
        return found;
    }

    private List<String> choices(String name) {
        List<String> choices = new ArrayList<>();
        for (Element field : fieldsNamed(name)) {
            if (field.normalName().equals("select")) {
                field.select("option").forEach(option -> choices.add(option.val()));
            } else if (field.attr("type").equals("radio") || field.attr("type").equals("checkbox")) {
                choices.add(field.hasAttr("value") ? field.val() : "on");
            }
        }
        return choices;
    }

    /** Returns what stands in a field, or null when nothing is chosen or the form has no such field. */
    public String value(String name) {
        return values.containsKey(name) ? values.get(name).get(0) : null;
    }

    /** Types or chooses; a choice must be one the page offers. */
    public FilledForm set(String name, String value) {
        if (!offers(name)) {
            throw guest.missing("the form has no field '" + name + "', only " + fields());
        }
        List<String> choices = choices(name);
        if (!choices.isEmpty() && !choices.contains(value)) {
            throw guest.missing("'" + name + "' offers " + choices + ", not '" + value + "'");
        }
        values.put(name, new ArrayList<>(List.of(value)));
        return this;
    }

    /** Types into the fields of one name, one after the other, as a table has them. */
    public FilledForm setAll(String name, List<String> all) {
        int places = fieldsNamed(name).size();
        if (places < all.size()) {
            throw guest.missing("'" + name + "' has " + places + " places, not " + all.size());
        }
        List<String> filled = new ArrayList<>(all);
        while (filled.size() < places) {
            filled.add("");
        }
        values.put(name, filled);
        return this;
    }

    /** Returns how many fields of one name the page offers. */
    public int places(String name) {
        return fieldsNamed(name).size();
    }

    /** Chooses the option of a list that holds these words. */
    public FilledForm choose(String name, String words) {
        for (Element field : fieldsNamed(name)) {
            for (Element option : field.select("option")) {
                if (option.text().contains(words)) {
                    return set(name, option.val());
                }
            }
        }
        throw guest.missing("'" + name + "' has no option '" + words + "'");
    }

    /** Ticks every box of a name. */
    public FilledForm tickEach(String name) {
        choices(name).forEach(value -> tick(name, value));
        return this;
    }

    /** Ticks one of several boxes of the same name. */
    public FilledForm tick(String name, String value) {
        if (!offers(name, value)) {
            throw guest.missing("'" + name + "' offers " + choices(name) + ", not '" + value + "'");
        }
        if (!values.getOrDefault(name, List.of()).contains(value)) {
            add(name, value);
        }
        return this;
    }

    public FilledForm untickAll(String name) {
        values.remove(name);
        return this;
    }

    /** Presses the button of the form. */
    public Guest send() {
        return sendTo(action());
    }

    /** Presses the button, and a proxy sends the form to another node of the clinic. */
    public Guest sendAt(URI node) {
        URI there = URI.create(action());
        return sendTo(node.resolve(there.getRawPath() + (there.getRawQuery() == null ? "" : "?" + there.getRawQuery())).toString());
    }

    private String action() {
        if (button != null && button.hasAttr("formaction")) {
            return button.absUrl("formaction");
        }
        return form.hasAttr("action") && !form.attr("action").isBlank() ? form.absUrl("action") : guest.at().toString();
    }

    private Guest sendTo(String action) {
        if (button != null && button.hasAttr("name")) {
            add(button.attr("name"), button.val());
        }
        StringBuilder body = new StringBuilder();
        values.forEach((name, all) -> all.forEach(value -> body.append(body.isEmpty() ? "" : "&").append(encode(name)).append('=')
                .append(encode(value))));
        if (form.attr("method").equalsIgnoreCase("post")) {
            return guest.post(action, body.toString());
        }
        return guest.open(action + (action.contains("?") ? "&" : "?") + body);
    }

    private static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
