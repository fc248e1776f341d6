package org.steadwork.demo;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.journey.Guest;

/** Red flags: closes them with reason, reader and day, and finds suspended afterwards only what stays barred for good. */
final class FlagCloseStep implements WalkStep {

    private final Map<String, String> blocks = Content.yaml("red-flags/suspensions.yaml").entries("tokens").stream()
            .collect(Collectors.toMap(token -> token.text("token"), token -> token.text("blocks")));

    /** Before a discharge is signed its flags are closed; at another visit letters are written while they are open. */
    static void beforeADischarge(WalkedVisit visit) {
        if (visit.entry().text("kind").equals("discharge")) {
            closings(visit);
        }
    }

    @Override
    public void walk(WalkedVisit visit) {
        closings(visit);
        visit.expected().flatMap(expected -> expected.entry("after_closing")).ifPresent(after -> {
            Guest guest = visit.later().apply(LocalDateTime.of(visit.day(), LocalTime.of(18, 0)));
            if (after.has("reason")) {
                close(visit, after, guest);
            }
            Set<String> held = RedFlagStep.held(guest.open(visit.path("/red-flags")).expect(200));
            after.texts("still_suspended").forEach(token -> assertTrue(held.contains(blocks.get(token)), visit.where() + token + " is free: " + held));
            after.texts("not_suspended").forEach(token -> assertFalse(held.contains(blocks.get(token)), visit.where() + token + " is held"));
        });
    }

    private static void closings(WalkedVisit visit) {
        for (Entry action : visit.entry().entries("flag_actions")) {
            if (action.text("act").equals("close")) {
                close(visit, action, visit.later().apply(LocalDateTime.parse(action.text("at"))));
            }
        }
    }

    private static void close(WalkedVisit visit, Entry action, Guest guest) {
        guest.open(visit.path("/red-flags")).expect(200);
        for (List<String> open = RedFlagStep.flagsToClose(guest); !open.isEmpty(); open = RedFlagStep.flagsToClose(guest)) {
            guest.open(open.get(0)).expect(200);
            guest.formWithButton("Close the flag").set("seenBy", action.optionalText("seen_by").orElse("The surgeon"))
                    .set("seenOn", action.optionalText("seen_on").orElse(visit.day().toString())).set("closeReason", action.text("reason"))
                    .set("result", action.optionalText("outcome").orElse("")).send().expect(200);
            guest.open(visit.path("/red-flags")).expect(200);
        }
    }
}
