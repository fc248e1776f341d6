package org.steadwork.casemap;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.CardKey;
import org.steadwork.casefile.CardKind;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.MapCard;
import org.steadwork.casefile.MapMeasure;
import org.steadwork.casefile.MapPart;
import org.steadwork.drawing.Trend;

/** Lays invented cards on the map of the cases that ask for them. */
@ApplicationScoped
class PlacedCards implements MapPart {

    private final Map<Long, List<MapCard>> byCase = new ConcurrentHashMap<>();

    void on(long caseId, List<MapCard> cards) {
        byCase.put(caseId, cards);
    }

    @Override
    public List<MapCard> cards(CaseFile caseFile) {
        return byCase.getOrDefault(caseFile.id(), List.of());
    }

    @Override
    public List<MapMeasure> measures(CaseFile caseFile) {
        if (!byCase.containsKey(caseFile.id())) {
            return List.of();
        }
        LocalDate start = LocalDate.of(2026, 3, 4);
        Trend ndi = new Trend("ndi", "Neck disability (NDI)", "%", 0, 100, true, 0, List.of(new Trend.Visit(start, 34.),
                new Trend.Visit(start.plusWeeks(1), null), new Trend.Visit(start.plusWeeks(3), 22.), new Trend.Visit(start.plusWeeks(7), 12.)), 9.4, 14.);
        Trend pain = new Trend("pain", "Pain, worst in the last week", "", 0, 10, true, 0,
                List.of(new Trend.Visit(start, 6.), new Trend.Visit(start.plusWeeks(7), 1.)), 2., 2.);
        String href = "/cases/" + caseFile.id() + "/outcomes";
        return List.of(new MapMeasure(true, "Neck disability", "−22", "Important change, better", "NDI 34 % to 12 % in seven weeks.", "12", "%, was 34", ndi, href),
                new MapMeasure(false, "Pain, worst in the last week", "−5", "Important change", "", "1", "of 10, was 6", pain, href));
    }

    /** Two symptoms, three findings, one in range, and two actions of which one was agreed for a finding. */
    static List<MapCard> neckAtWork(long caseId) {
        String symptoms = "/cases/" + caseId + "/symptoms";
        String place = "/cases/" + caseId + "/work-place";
        String programme = "/cases/" + caseId + "/programme";
        return List.of(
                MapCard.symptom("shoulder_right", "Right upper shoulder", "Worst 6 of 10", symptoms, Set.of(BodyRegion.SHOULDER)),
                MapCard.symptom("neck", "Base of neck <b>", "Worst 5 of 10", symptoms, Set.of(BodyRegion.NECK)),
                MapCard.finding("SC-1", "Main screen low", "150 mm", "out", "out of range", place, Set.of(BodyRegion.NECK),
                        new MapCard.Grounds(1.5, "150 mm low", 7., "e0")),
                MapCard.finding("TK-3", "Long screen runs", "140 min", "out", "out of range", place, Set.of(BodyRegion.NECK, BodyRegion.SHOULDER),
                        new MapCard.Grounds(1.4, "140 min unbroken", 7., "e2")),
                MapCard.finding("PH-1", "Phone held by the shoulder", "", "near", "partly", place, Set.of(BodyRegion.SHOULDER),
                        new MapCard.Grounds(.5, "partly met", null, "e3")),
                new MapCard(new CardKey(CardKind.FINDING, "rest"), "Chair, desk, keyboard", "", "in", "in range", place, true, Set.of(), null, Set.of()),
                MapCard.action("adjustment-1", "Screen raised", "In place since 20 Mar 2026", place, true, Set.of(),
                        Set.of(new CardKey(CardKind.FINDING, "SC-1"))),
                MapCard.action("prescription-1", "Neck turns", "17 of 20 desk sessions", programme, false, Set.of(BodyRegion.NECK), Set.of()));
    }
}
