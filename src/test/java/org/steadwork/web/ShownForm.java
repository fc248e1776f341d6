package org.steadwork.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;

/**
 * A form as a page shows it.
 *
 * @param values  what would be sent as it stands; what must not stay empty is filled with something plausible
 * @param typed   fields one types into
 * @param choices fields with given answers: selects, radio buttons, ticks
 * @param secret  those of the typed ones that are never shown again
 */
record ShownForm(String page, String action, Map<String, List<String>> values, Set<String> typed, Set<String> choices,
        Set<String> secret) {

    static List<ShownForm> of(String path, Document page) {
        List<ShownForm> forms = new ArrayList<>();
        for (Element form : page.select("form[method=post]")) {
            Elements buttons = form.select("button");
            buttons.addAll(page.select("button[form=" + (form.id().isEmpty() ? "none" : form.id()) + "]"));
            Set<String> seen = new LinkedHashSet<>();
            for (Element button : buttons) {
                String action = button.hasAttr("formaction") ? button.attr("formaction") : form.attr("action");
                if (seen.add(action + " " + button.attr("name") + "=" + button.val().replaceAll("-.*", ""))) {
                    forms.add(read(path, action, form, button, page));
                }
            }
        }
        return forms;
    }

    private static ShownForm read(String path, String action, Element form, Element button, Document page) {
        ShownForm shown = new ShownForm(path, action, new LinkedHashMap<>(), new LinkedHashSet<>(), new LinkedHashSet<>(), new LinkedHashSet<>());
        Elements fields = form.select("input[name], textarea[name], select[name]");
        if (!form.id().isEmpty()) {
            fields.addAll(page.select("input[form=" + form.id() + "], textarea[form=" + form.id() + "], select[form=" + form.id() + "]"));
        }
        fields.forEach(shown::add);
        if (!button.attr("name").isEmpty()) {
            shown.values.put(button.attr("name"), List.of(button.val()));
        }
        return shown;
    }

    private void add(Element field) {
        String name = field.attr("name");
        String type = field.tagName().equals("input") ? field.attr("type").toLowerCase() : field.tagName();
        switch (type) {
            case "hidden" -> put(name, field.val());
            case "file" -> { } // a text cannot choose a file; what is sent as one is PhotoPagesTest's
            case "password" -> {
                typed.add(name);
                secret.add(name);
                put(name, TestAccounts.PASSWORD);
            }
            case "radio", "checkbox" -> {
                choices.add(name);
                if (field.hasAttr("checked") || type.equals("radio") && !values.containsKey(name)) {
                    if (type.equals("radio")) {
                        values.put(name, new ArrayList<>(List.of(field.val())));
                    } else {
                        put(name, field.val());
                    }
                }
            }
            case "select" -> {
                choices.add(name);
                Element chosen = field.selectFirst("option[selected]");
                Element first = field.select("option").stream().filter(option -> !option.val().isEmpty()).findFirst().orElse(null);
                put(name, chosen != null ? chosen.val() : first == null ? "" : first.val());
            }
            default -> {
                typed.add(name);
                put(name, field.val().isEmpty() ? plausible(name) : field.val());
            }
        }
    }

    private void put(String name, String value) {
        values.computeIfAbsent(name, key -> new ArrayList<>()).add(value);
    }

    /** A word that many fields take: dates where the name says so, else a small number, which is a text too. */
    private static String plausible(String name) {
        if (name.matches("(?i).*(On|From|weekTo|since)$")) {
            return "18 Mar 2026";
        }
        return name.matches("(?i).*(until|reviewOn|wsUntil)$") ? "18 Mar 2027" : name.matches("(?i).*time$") ? "11:40"
                : name.equals("email") ? "a@b.example" : name.matches(".*(estimate|effort|everyHours|birth.*).*") ? "" : "2";
    }

    /** Two forms of one kind have the same shape: the same address and fields, whatever the numbers in them. */
    String shape() {
        return (action + " " + values.getOrDefault("do", List.of())).replaceAll("\\d+", "#")
                + (action.endsWith("/attendance") ? typed : "");
    }
}
