package org.steadwork.account.password;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Tells a password that is made of nothing but what people choose most: up to three listed words one after another, whatever digits and signs stand
 * between and around them and whichever letters are written as signs; runs along the keyboard or the alphabet; one short piece repeated;
 * digits alone.
 */
public final class WeakPasswords {

    private static final String[] RUNS = {"abcdefghijklmnopqrstuvwxyz", "qwertyuiopasdfghjklzxcvbnm", "qwertzuiopasdfghjklyxcvbnm",
        "azertyuiopqsdfghjklmwxcvbn", "1234567890", "qazwsxedcrfvtgbyhnujmikolp", "1qaz2wsx3edc4rfv5tgb6yhn7ujm8ik9ol0p", "1q2w3e4r5t6y7u8i9o0p"};
    private static final int SHORTEST_RUN = 4;
    private static final int LONGEST_PIECE = 5;
    private static final int SHORTEST_WORD = 3;
    private static final int MOST_WORDS = 3;
    private static final int MOST_LETTERS = 128;

    private final Set<String> words;

    /** @param words in lower case, letters only */
    public WeakPasswords(Set<String> words) {
        this.words = Set.copyOf(words);
    }

    /**
     * Says why a password is easy to guess, or returns null when nothing of that kind is found.
     *
     * @param own names that an attacker knows: of the person, the account, the clinic
     */
    public String reason(String password, Set<String> own) {
        String lower = password.toLowerCase(Locale.ROOT);
        String plain = lower.length() > MOST_LETTERS ? lower.substring(0, MOST_LETTERS) : lower;
        if (plain.chars().noneMatch(Character::isLetter)) {
            return plain.chars().anyMatch(Character::isDigit) ? "It is made of digits alone." : "It is made of signs alone.";
        }
        if (repeats(plain)) {
            return "It repeats one short piece.";
        }
        Set<String> known = new HashSet<>(words);
        own.forEach(name -> {
            for (String part : name.toLowerCase(Locale.ROOT).split("[^\\p{L}]+")) {
                if (part.length() >= SHORTEST_WORD) {
                    known.add(part);
                }
            }
        });
        for (String read : new String[]{lettersOf(plain, false), lettersOf(core(plain), true)}) {
            if (read.isEmpty() || made(read, known)) {
                return "It is made of words that many people choose, or of the names of this account or clinic.";
            }
        }
        return null;
    }

    /** True when the whole is at most three different listed words and runs; four that were chosen by chance are not found in time. */
    private static boolean made(String letters, Set<String> known) {
        List<Set<String>> reached = new ArrayList<>(Collections.nCopies(letters.length() + 1, null));
        reached.set(0, Set.of());
        for (int at = 0; at < letters.length(); at++) {
            Set<String> before = reached.get(at);
            for (int end = at + SHORTEST_WORD; before != null && end <= letters.length(); end++) {
                String piece = letters.substring(at, end);
                if (known.contains(piece) || piece.length() >= SHORTEST_RUN && run(piece)) {
                    Set<String> with = new HashSet<>(before);
                    with.add(piece);
                    if (reached.get(end) == null || with.size() < reached.get(end).size()) {
                        reached.set(end, with);
                    }
                }
            }
        }
        Set<String> all = reached.get(letters.length());
        return all != null && all.size() <= MOST_WORDS;
    }

    private static boolean run(String piece) {
        for (String run : RUNS) {
            if (run.contains(piece) || run.contains(new StringBuilder(piece).reverse())) {
                return true;
            }
        }
        return piece.chars().distinct().count() == 1;
    }

    private static boolean repeats(String text) {
        for (int length = 1; length <= LONGEST_PIECE; length++) {
            boolean same = true;
            for (int i = length; i < text.length() && same; i++) {
                same = text.charAt(i) == text.charAt(i - length);
            }
            if (same) {
                return true;
            }
        }
        return false;
    }

    /** Takes off what stands before the first letter and after the last: years, counters, exclamation marks. */
    private static String core(String text) {
        return text.replaceAll("^[^\\p{L}]+|[^\\p{L}]+$", "");
    }

    /** @param undone true to read signs and digits as the letters they stand for, false to leave them out */
    private static String lettersOf(String text, boolean undone) {
        StringBuilder letters = new StringBuilder();
        for (char c : text.toCharArray()) {
            char letter = undone ? switch (c) {
                case '0' -> 'o';
                case '1', '!', '|' -> 'i';
                case '3', '€' -> 'e';
                case '4', '@' -> 'a';
                case '5', '$' -> 's';
                case '7', '+' -> 't';
                default -> c;
            } : c;
            if (Character.isLetter(letter)) {
                letters.append(letter);
            }
        }
        return letters.toString();
    }
}
