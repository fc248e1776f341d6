package org.steadwork.workplace;

import java.util.List;
import org.steadwork.people.Site;

/** The page of a site: its rooms with their desks and chairs. {@code names} tells whether the reader may see who sits where. */
record SiteView(Site site, List<RoomView> rooms, boolean names) {

    /** One room with what stands in it. */
    record RoomView(Room room, List<FurnitureRow> pieces) {
    }
}
