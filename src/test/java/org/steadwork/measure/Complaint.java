package org.steadwork.measure;

import java.util.List;

/** Kinds of complaints an invented case can have, how common each is, and where it hurts. Shares: proposal, near what desk work brings. */
enum Complaint {
    NECK("Neck ache at the desk", 30, "ndi", List.of("neck", "shoulder_back_r"), List.of("SC-1", "SC-3", "PH-1", "WO-1")),
    LOW_BACK("Low back pain when sitting", 28, "odi21a", List.of("low_back", "buttock_l"), List.of("CH-1", "CH-2", "CH-4", "WO-1")),
    SHOULDER("Shoulder pain at the mouse", 16, "quickdash", List.of("shoulder_r", "shoulder_l"), List.of("MS-1", "DK-1", "KB-1")),
    WRIST("Wrist and forearm pain", 14, "quickdash", List.of("wrist_hand_r", "wrist_hand_l"), List.of("MS-1", "KB-1", "KB-2")),
    KNEE("Knee pain on stairs", 12, "lefs", List.of("knee_r", "knee_l"), List.of("CH-2", "DK-2"));

    final String words;
    final int share;
    final String instrument;
    final List<String> zones;
    final List<String> criteria;

    Complaint(String words, int share, String instrument, List<String> zones, List<String> criteria) {
        this.words = words;
        this.share = share;
        this.instrument = instrument;
        this.zones = zones;
        this.criteria = criteria;
    }

    /** Returns the complaint at a place in [0, 100) of the shares laid end to end. */
    static Complaint at(int place) {
        int left = place;
        for (Complaint complaint : values()) {
            left -= complaint.share;
            if (left < 0) {
                return complaint;
            }
        }
        throw new IllegalArgumentException("Shares go to 99, but the place was " + place);
    }
}
