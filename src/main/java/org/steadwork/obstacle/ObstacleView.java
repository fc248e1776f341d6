package org.steadwork.obstacle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.steadwork.kernel.Answer;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/**
 * What the page of the obstacles shows.
 *
 * @param screen the result of the intake screen, or null
 * @param longOff whether the worker was off for this problem for more than four weeks
 */
record ObstacleView(long caseId, Form form, List<Obstacle> obstacles, Map<String, ObstacleAnswer> answers, Screening.Result screen, boolean longOff) {

    /**
     * The obstacles of one kind.
     *
     * @param counts how many stand how, in words
     * @param open whether they are unfolded: something is present or wrong in there, or it is the first and nothing is answered yet
     */
    record Group(Obstacle.Kind kind, List<Obstacle> obstacles, String counts, boolean open) {
    }

    public List<Group> groups() {
        return Arrays.stream(Obstacle.Kind.values()).map(this::group).toList();
    }

    private Group group(Obstacle.Kind kind) {
        List<Obstacle> own = obstacles.stream().filter(obstacle -> obstacle.kind() == kind).toList();
        long present = own.stream().filter(obstacle -> form.is("f_" + obstacle.key(), "yes")).count();
        long absent = own.stream().filter(obstacle -> form.is("f_" + obstacle.key(), "no")).count();
        boolean first = kind == Obstacle.Kind.PERSON && answers.isEmpty();
        return new Group(kind, own, present + " present, " + absent + " absent, " + (own.size() - present - absent) + " not settled",
                first || present > 0 || own.stream().anyMatch(this::problem));
    }

    private boolean problem(Obstacle obstacle) {
        return List.of("f_", "n_").stream().map(field -> field + obstacle.key()).anyMatch(field -> form.error(field) != null || form.stored(field) != null);
    }

    /** True when the words to an answer are shown without asking for them. */
    public boolean wordsOpen(Obstacle obstacle) {
        return form.is("f_" + obstacle.key(), "yes") || form.has("n_" + obstacle.key()) || problem(obstacle);
    }

    /** What is present, with what it changes in the plan. */
    public List<Obstacle> present() {
        return obstacles.stream().filter(obstacle -> answers.containsKey(obstacle.key()) && answers.get(obstacle.key()).present()).toList();
    }

    public ObstacleAnswer answer(Obstacle obstacle) {
        return answers.get(obstacle.key());
    }

    /** How many are neither present nor absent. */
    public long open() {
        return obstacles.stream().filter(obstacle -> !answers.containsKey(obstacle.key()) || answers.get(obstacle.key()).answer().open()).count();
    }

    public List<Option> choices() {
        return List.of(new Option("yes", "present"), new Option("no", "absent"), new Option("unknown", "unknown"), new Option("not_asked", "not asked"));
    }

    /** What the count suggests; common practice, and a clinician decides. */
    public List<String> suggestions() {
        List<String> lines = new ArrayList<>();
        long personOrWork = count(Obstacle.Kind.PERSON) + count(Obstacle.Kind.WORK);
        if (count(Obstacle.Kind.SPECIALIST) > 0) {
            lines.add("One for a specialist is present: it takes its own route, whatever else counts.");
        }
        if (personOrWork >= 4 || count(Obstacle.Kind.SETTING) > 0 && longOff) {
            lines.add("Bring the case to a review meeting (" + (personOrWork >= 4 ? personOrWork + " of person or work" : "one of the setting, and off for"
                    + " more than four weeks") + ").");
        } else if (personOrWork >= 2 || screen != null && screen.raised()) {
            lines.add("Add contact with the work place, with consent, and review in one to two weeks (" + (personOrWork >= 2 ? personOrWork
                    + " of person or work" : "the screen asks for more support") + ").");
        } else if (lines.isEmpty()) {
            lines.add("Usual care (" + personOrWork + " of person or work).");
        }
        return lines;
    }

    static String path(long caseId) {
        return "/cases/" + caseId + "/obstacles";
    }

    private long count(Obstacle.Kind kind) {
        return present().stream().filter(obstacle -> obstacle.kind() == kind).count();
    }

    static Form show(List<ObstacleAnswer> given) {
        Form form = Form.empty().with("version", version(given));
        given.forEach(answer -> form.with("f_" + answer.obstacle(), answer.answer().name().toLowerCase(java.util.Locale.ROOT))
                .with("n_" + answer.obstacle(), answer.words()));
        return form;
    }

    /** A number that changes whenever an answer changes. */
    static int version(List<ObstacleAnswer> given) {
        return Math.floorMod(given.stream().mapToInt(answer -> answer.obstacle().hashCode() * 31 + answer.version() + 1).sum(), 999_999_937);
    }

    static Answer read(Form form, String key) {
        Answer answer = form.choice("f_" + key, "The answer", Answer.class);
        return answer == null ? Answer.NOT_ASKED : answer;
    }
}
