package org.steadwork.workplace;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.steadwork.workplace.fit.Settings;
import org.steadwork.workplace.fit.SharedDesk;

/**
 * The page about the people at one desk: what each sets, what they can share, who is left out and by how much.
 *
 * @param shared what those counted in can share, in the order of {@link #counted}; null when nothing can be worked out
 * @param better the height of a desk that would serve them best, when this one is fixed; null otherwise
 */
record SharedDeskView(Furniture desk, SharedStation station, List<DeskSharer> people, SharedDesk shared, SharedDesk.Sharing better) {

    /** One person's settings and what is then off; {@code state} draws the shape of the verdict. */
    record Row(String mark, String name, String seat, String depth, String footrest, String desk, String armrest, String screen, List<String> misses, String state, String verdict) {
    }

    /** Something to share, and whom it leaves out. */
    record Share(String what, String height, long leftOut, List<Left> left) {
    }

    /** Who is left out, and by how much. */
    record Left(String name, String by) {
    }

    List<DeskSharer> counted() {
        return people.stream().filter(DeskSharer::counted).toList();
    }

    public boolean several() {
        return shared != null && counted().size() > 1;
    }

    public boolean workedOut() {
        return shared != null;
    }

    public boolean heightKnown() {
        return station.heights().isPresent();
    }

    /** The answer in one sentence. */
    public String headline() {
        SharedDesk.Sharing last = last();
        int all = counted().size();
        return last.leftOut() == 0 ? (all == 2 ? "Both" : "All " + all) + " can share it" + (last.places().stream().allMatch(place -> place.misses().isEmpty()) ? ", everything in range." : ", near the edge at worst.")
                : last.leftOut() + " of " + all + (last.leftOut() == 1 ? " is" : " are") + " left out when everything is shared.";
    }

    /** Says what another desk would do, where this one is fixed and another height leaves fewer out; else null. */
    public String elsewhere() {
        if (better == null || better.leftOut() >= shared.fixed().leftOut()) {
            return null;
        }
        return "A desk at " + Numerals.mm(better.height()) + " would leave " + (better.leftOut() == 0 ? "nobody" : String.valueOf(better.leftOut())) + " out by its height; this one leaves "
                + shared.fixed().leftOut() + ".";
    }

    /** Returns what they can share, each row keeping what stands above it. */
    public List<Share> shares() {
        List<Share> shares = new ArrayList<>();
        shares.add(share(heightIsFixed() ? "Desk as it stands" : "Desk at one height", shared.fixed()));
        shared.footrest().ifPresent(one -> shares.add(share("One footrest", one)));
        shared.screen().ifPresent(one -> shares.add(share("Screen top at one height above the desk", one)));
        return shares;
    }

    private boolean heightIsFixed() {
        return station.heights().orElseThrow().isFixed();
    }

    private Share share(String what, SharedDesk.Sharing sharing) {
        List<Left> left = new ArrayList<>();
        for (int i = 0; i < sharing.places().size(); i++) {
            SharedDesk.Place place = sharing.places().get(i);
            if (place.leftOut()) {
                left.add(new Left(counted().get(i).name(), place.misses().stream().map(WorkplaceWords::of).collect(Collectors.joining("; "))));
            }
        }
        return new Share(what, sharing.height() == 0 ? "none" : Numerals.mm(sharing.height()), sharing.leftOut(), left);
    }

    /** Returns each person's settings for themselves. */
    public List<Row> own() {
        return rows(shared.own());
    }

    /** Returns each person's settings when everything is shared. */
    public List<Row> together() {
        return rows(last().places());
    }

    /** The settings for the cards: with everything shared, or each for themselves. */
    List<SharedDesk.Place> places(boolean sharing) {
        return sharing && several() ? last().places() : shared.own();
    }

    private SharedDesk.Sharing last() {
        return shared.screen().or(shared::footrest).orElse(shared.fixed());
    }

    private List<Row> rows(List<SharedDesk.Place> places) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            DeskSharer sharer = counted().get(i);
            SharedDesk.Place place = places.get(i);
            Settings at = place.settings();
            rows.add(new Row(sharer.mark(), sharer.name(), shown(at.seat()), shown(at.seatDepth()), at.footrest() == 0 ? "none" : shown(at.footrest()), shown(at.desk()), shown(at.armrest()),
                    shown(at.screenTop() - at.desk()), place.misses().stream().map(WorkplaceWords::of).toList(),
                    place.leftOut() ? "out" : place.misses().isEmpty() ? "in" : "near", place.leftOut() ? "left out" : place.misses().isEmpty() ? "in range" : "near the edge"));
        }
        return rows;
    }

    private static String shown(double mm) {
        return Double.isNaN(mm) ? "–" : Numerals.setting(mm);
    }
}
