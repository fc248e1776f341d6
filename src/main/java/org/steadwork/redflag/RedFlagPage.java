package org.steadwork.redflag;

import java.time.LocalDate;
import java.util.List;

/**
 * What the page of red flags shows.
 *
 * @param openFlags the worst first
 * @param watched flags of the level to watch
 */
public record RedFlagPage(Summary summary, List<Step> steps, List<FlagAction> calls, boolean callMissing, List<Held> held,
                          List<FlagRow> openFlags, List<FlagRow> watched, List<FlagRow> closedFlags, List<String> advice,
                          ScreenRow screen, List<RegionRow> regions, ScreenQuestions.Layout questions, List<ScreenRow> history) {

    /** The result in plain words. {@code kind} is a modifier of the notice: stop, caution, good or plain. */
    public record Summary(String kind, String title, List<String> sentences, String level) {
    }

    /** One thing to do, the first words in bold. */
    public record Step(String lead, String text, String href, String link) {
    }

    /** One kind of treatment that is held, and what still may be done. */
    public record Held(String blocks, String allowed, boolean forGood) {
    }

    /** One flag. */
    public record FlagRow(long id, int version, String name, String level, String pointsTo, String action, String since, boolean certain,
                          String changed, boolean waitsForCall, String rule, String basis, String published, String closed) {

        /** What a form sends to say that this flag is meant, as it was shown. */
        public String ticket() {
            return id + ":" + version;
        }
    }

    /** One screen. {@code id} is "new" for one that is not stored yet. */
    public record ScreenRow(String id, int version, String occasion, LocalDate on, String by, boolean signed, String signedLine,
                            String verdict, int openAnswers, boolean outOfDate, boolean ofEarlierDay, String saved) {
    }

    /** One region to ask about; a reported one is always asked about. */
    public record RegionRow(String key, String label, boolean chosen, boolean reported) {
    }
}
