package org.steadwork.outcome.scoring;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The answers to the items of one instrument, in the order of the items; an item without an answer stays without one. */
public final class ItemAnswers {

    private final List<Item> items;
    private final List<Integer> values;
    private final int answered;
    private final int sum;
    private final int highestSum;

    private ItemAnswers(List<Item> items, List<Integer> values) {
        if (values.size() > items.size()) {
            throw InvalidAnswer.tooMany(items.size(), values.size());
        }
        if (values.size() < items.size()) {
            throw new IllegalArgumentException("There are " + items.size() + " items, but " + values.size() + " answers");
        }
        int count = 0;
        int total = 0;
        int highest = 0;
        for (int i = 0; i < values.size(); i++) {
            Integer value = values.get(i);
            if (value != null) {
                if (!items.get(i).allows(value)) {
                    throw new InvalidAnswer(items.get(i), value.toString());
                }
                count++;
                total += value;
                highest += items.get(i).max();
            }
        }
        this.answered = count;
        this.sum = total;
        this.highestSum = highest;
        this.items = List.copyOf(items);
        this.values = Collections.unmodifiableList(new ArrayList<>(values));
    }

    /** Takes answers as numbers, null for none; throws {@link InvalidAnswer} for one out of the range of its item. */
    public static ItemAnswers of(List<Item> items, List<Integer> values) {
        return new ItemAnswers(items, values);
    }

    /** Reads answers as they were typed, one an item, in their order: blank is no answer, a true or plain minus may lead; anything but a whole number is refused. */
    public static ItemAnswers read(List<Item> items, List<String> texts) {
        if (texts.size() > items.size()) {
            throw InvalidAnswer.tooMany(items.size(), texts.size());
        }
        List<Integer> values = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            values.add(read(items.get(i), texts.get(i)));
        }
        return new ItemAnswers(items, values);
    }

    /** Reads one typed answer, null for a blank one; throws {@link InvalidAnswer} for anything but a whole number in range. */
    public static Integer read(Item item, String text) {
        if (text == null || text.isBlank()) {
            return null;
        }
        try {
            int value = Integer.parseInt(text.strip().replace('\u2212', '-'));
            if (item.allows(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            // said below, in the words of the item
        }
        throw new InvalidAnswer(item, text.strip());
    }

    public List<Item> items() {
        return items;
    }

    /** Returns the answers in the order of the items, null for an item without one. */
    public List<Integer> values() {
        return values;
    }

    public int answered() {
        return answered;
    }

    public boolean complete() {
        return answered == items.size();
    }

    /** Returns the numbers of the items without an answer. */
    public List<Integer> missing() {
        if (complete()) {
            return List.of();
        }
        List<Integer> missing = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            if (values.get(i) == null) {
                missing.add(items.get(i).number());
            }
        }
        return missing;
    }

    /** Returns the answers to the items numbered from first to last, both included. */
    public ItemAnswers part(int first, int last) {
        List<Item> partItems = new ArrayList<>();
        List<Integer> partValues = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i).number() >= first && items.get(i).number() <= last) {
                partItems.add(items.get(i));
                partValues.add(values.get(i));
            }
        }
        return new ItemAnswers(partItems, partValues);
    }

    int sum() {
        return sum;
    }

    /** Returns the highest sum that the answered items could have reached. */
    int highestSum() {
        return highestSum;
    }
}
