package org.steadwork.redflag;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.steadwork.redflag.RedFlagContent.RuleWords;
import org.steadwork.redflag.RedFlagPage.FlagRow;
import org.steadwork.redflag.rules.CombinationRule;
import org.steadwork.redflag.rules.Outcome;
import org.steadwork.redflag.rules.Question;
import org.steadwork.redflag.rules.ScreenResult;
import org.steadwork.web.Dates;
import org.steadwork.web.Initial;

/** Puts flags into words, with the rule and the source that each rests on. */
@ApplicationScoped
class FlagRows {

    @Inject
    RedFlagContent content;

    /** @param result of the screen that is shown, for the published rules; null for none */
    List<FlagRow> of(List<Flag> flags, Instant latestCall, ScreenResult result) {
        return flags.stream().map(flag -> row(flag, latestCall, result)).toList();
    }

    FlagRow row(Flag flag, Instant latestCall, ScreenResult result) {
        Optional<CombinationRule> rule = content.catalogue().rule(flag.origin());
        Optional<Question> question = content.catalogue().question(flag.origin());
        String name = Initial.large(flag.name());
        return new FlagRow(flag.id(), flag.version(), name, flag.urgency().label(), flag.pointsTo(), flag.action(), Dates.shown(flag.raisedAt()),
                flag.certain(), changed(flag), flag.waitsForCall(latestCall),
                rule.map(CombinationRule::name).orElseGet(() -> question.map(Question::prompt).orElse(flag.origin())),
                rule.map(CombinationRule::basis).orElseGet(() -> question.map(Question::source).orElse("no longer in the content")),
                published(flag, result), closed(flag));
    }

    private static String changed(Flag flag) {
        if (flag.urgencyBy() == null) {
            return null;
        }
        return (flag.lowered() ? "Lowered from " : "Changed from ") + flag.foundUrgency().label() + " by " + flag.urgencyBy().displayName()
                + (flag.urgencyReason() == null ? "" : ": " + flag.urgencyReason());
    }

    private static String closed(Flag flag) {
        return flag.open() ? null : "Closed " + Dates.shown(flag.closedAt()) + " by " + flag.closedBy().displayName() + ": " + flag.closeReason()
                + ". Seen by " + flag.seenBy() + " on " + Dates.shown(flag.seenOn()) + (flag.result() == null ? "" : ". " + flag.result());
    }

    /** The published rules that the flag's question or rule looks at, as far as anything of them was answered. */
    private String published(Flag flag, ScreenResult result) {
        if (result == null) {
            return null;
        }
        List<String> lines = content.publishedRules().values().stream().filter(words -> looksAt(flag, words))
                .filter(words -> result.published().get(words.rule().id()).outcome() != Outcome.INCOMPLETE
                        || result.published().get(words.rule().id()).count().map(count -> count.low() > 0).orElse(false))
                .map(words -> words.name() + ": " + result.published().get(words.rule().id()).outcome().label()
                        + result.published().get(words.rule().id()).count().map(count -> ", " + count.words() + " of " + words.items().size()).orElse("")
                        + ". " + words.accuracy() + ". " + words.source())
                .toList();
        return lines.isEmpty() ? null : String.join(" ", lines);
    }

    private boolean looksAt(Flag flag, RuleWords words) {
        return words.offeredWith().contains(flag.origin()) || content.catalogue().rule(flag.origin())
                .map(rule -> rule.keys().contains("rule:" + words.rule().id())).orElse(false);
    }
}
