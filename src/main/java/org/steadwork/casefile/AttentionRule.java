package org.steadwork.casefile;

import java.time.LocalDate;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A rule of Today as the content states it.
 *
 * @param name what it is called where rules are chosen, in a few words
 * @param mark the shape beside the label: open for what is to do, near for what is late or a caution, out for a red flag, none for what
 *     is not known
 * @param facts what a bean must tell of the case, with the words shown before each
 * @param settings thresholds and periods by key
 * @param snoozeDays the most days for which its entries may be put off; 0 for never, 1 for the rest of the day
 * @param flag true for an open red flag or a warning sign: a new one brings back whatever of the case is put off
 * @param leadOnly true for what is for the lead to look at and is shown to nobody else
 */
public record AttentionRule(String key, String name, Words words, Attention.Urgency urgency, String mark, Map<String, String> facts,
        Map<String, Setting> settings, int snoozeDays, boolean flag, boolean leadOnly, Ground ground) {

    private static final Pattern PLACE = Pattern.compile("\\{([a-z_]+)}");

    /**
     * What is said.
     *
     * @param label a word or two; may hold facts in braces, as the reason may
     * @param fires when it fires; may hold settings in braces
     * @param clears what takes an entry off
     */
    public record Words(String label, String reason, String action, String fires, String clears) {
    }

    /**
     * A threshold or a period.
     *
     * @param shipped the value that comes with the product; {@code value} is the clinic's own where it has one
     */
    public record Setting(String words, String unit, int value, int shipped, int least, int most) {

        Setting with(int own) {
            return new Setting(words, unit, own, shipped, least, most);
        }

        public boolean own() {
            return value != shipped;
        }
    }

    /** Where the rule comes from. {@code tag}: S seen in the source, CP common practice without one, P a proposal of ours. */
    public record Ground(String source, String tag) {

        public String tagWords() {
            return switch (tag) {
                case "S" -> "published";
                case "CP" -> "common practice, no published source";
                default -> "our proposal";
            };
        }
    }

    public int setting(String setting) {
        return settings.get(setting).value();
    }

    /** Makes an entry about a case. */
    public Attention.Entry entry(CaseFile file, String subject, LocalDate since, String href, Map<String, String> told) {
        return new Attention.Entry(this, file.id(), file.patient().name(), subject, since, href, 0, told);
    }

    /** Says when it fires, with the settings that hold. */
    public String fires() {
        return PLACE.matcher(words.fires()).replaceAll(place -> Matcher.quoteReplacement(shown(settings.get(place.group(1)))));
    }

    public boolean snoozable() {
        return snoozeDays > 0;
    }

    String fill(String pattern, Map<String, String> told) {
        return PLACE.matcher(pattern).replaceAll(place -> Matcher.quoteReplacement(told.getOrDefault(place.group(1),
                settings.containsKey(place.group(1)) ? shown(settings.get(place.group(1))) : "")));
    }

    static Pattern place() {
        return PLACE;
    }

    private static String shown(Setting setting) {
        return setting.value() + "\u00a0" + (setting.value() == 1 && setting.unit().endsWith("s") ? setting.unit().substring(0, setting.unit().length() - 1) : setting.unit());
    }
}
