package org.steadwork.exercise;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.steadwork.body.BodyRegion;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.content.ReadEarly;
import org.steadwork.exercise.dayplan.Dose;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.exercise.dayplan.SuspensionRule;

/** The exercises, conditions, ready sets and rules that ship as content; read once, wrong content stops the start. */
@ApplicationScoped
public class ExerciseCatalogue implements ReadEarly {

    private final Map<String, Condition> conditions = CatalogueReader.conditions();
    private final Map<String, Exercise.Kind> kinds = CatalogueReader.kinds();
    private final Map<String, Exercise> exercises = CatalogueReader.read(kinds, conditions);
    private final Map<String, SuspensionRule> suspensions = SuspensionRules.read(exercises, kinds);
    private final Map<String, Dose> heldStretches = heldStretches();
    private final List<ReadySet> sets = readySets();
    private final StopRules stopRules = StopRules.read();

    void readAtStart(@Observes StartupEvent start) {
        // observing makes the bean at the start, so that wrong content is found then and not by the first visitor
    }

    public Collection<Exercise> all() {
        return exercises.values();
    }

    public Optional<Exercise> find(String key) {
        return Optional.ofNullable(exercises.get(key));
    }

    /** Exercises for any of these regions, and those of the general kind; all when no region is named. */
    public List<Exercise> forRegions(Set<BodyRegion> regions) {
        return exercises.values().stream().filter(e -> regions.isEmpty() || e.regions().contains(BodyRegion.GENERAL)
                || e.regions().stream().anyMatch(regions::contains)).toList();
    }

    public Collection<Condition> conditions() {
        return conditions.values();
    }

    public Condition condition(String key) {
        return Optional.ofNullable(conditions.get(key)).orElseThrow(() -> new IllegalArgumentException("There is no condition '" + key + "'"));
    }

    /** The rule of a suspension; one that content does not know holds back everything. */
    public SuspensionRule suspension(String token) {
        return suspensions.getOrDefault(token, SuspensionRule.unknown(token));
    }

    public Set<String> suspensionTokens() {
        return suspensions.keySet();
    }

    /** The slow desk dose with longer holds, where the catalogue offers one besides its own. */
    public Optional<Dose> heldStretch(Exercise exercise) {
        return Optional.ofNullable(heldStretches.get(exercise.key()));
    }

    public List<ReadySet> sets() {
        return sets;
    }

    public StopRules stopRules() {
        return stopRules;
    }

    private Map<String, Dose> heldStretches() {
        Entry file = Content.yaml("exercises/desk-doses.yaml");
        file.text("source");
        Map<String, Dose> doses = new HashMap<>();
        for (Entry entry : file.entries("doses")) {
            Exercise exercise = known(entry, entry.text("key"));
            try {
                doses.put(exercise.key(), new Dose(CatalogueReader.range(entry, "hold_s"), CatalogueReader.range(entry, "reps"), exercise.dose().sides(),
                        null, null, null, CatalogueReader.range(entry, "every_hours"), exercise.dose().daysAWeek()));
            } catch (IllegalArgumentException e) {
                throw entry.problem(e.getMessage());
            }
        }
        return doses;
    }

    private List<ReadySet> readySets() {
        Entry file = Content.yaml("exercises/sets.yaml");
        file.text("source");
        List<ReadySet> ready = new ArrayList<>();
        for (Entry entry : file.entries("sets")) {
            if (entry.texts("now").isEmpty()) {
                throw entry.problem("'now' names no exercise");
            }
            ready.add(new ReadySet(entry.text("key"), entry.text("name"), entry.texts("now").stream().map(key -> known(entry, key)).toList(),
                    entry.texts("then").stream().map(key -> known(entry, key)).toList(), entry.optionalText("note").orElse("")));
        }
        return List.copyOf(ready);
    }

    private Exercise known(Entry entry, String key) {
        return find(key).orElseThrow(() -> entry.problem("there is no exercise '" + key + "'"));
    }
}
