package org.steadwork.body;

import java.util.Locale;

/** A clinical region of the body; the zones of the body chart, findings, questions and exercises all name one of these. */
public enum BodyRegion {
    NECK("Neck"),
    SHOULDER("Shoulder"),
    ELBOW_FOREARM("Elbow and forearm"),
    WRIST_HAND("Wrist and hand"),
    UPPER_BACK_CHEST("Upper back and chest"),
    LOW_BACK("Low back"),
    HIP_THIGH("Hip and thigh"),
    KNEE("Knee"),
    ANKLE_FOOT("Ankle and foot"),
    /** Head and abdomen: not a musculoskeletal region, so a report there asks for further questions. */
    GENERAL("General");

    private final String label;

    BodyRegion(String label) {
        this.label = label;
    }

    /** Returns the name used in content files, for example {@code low_back}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String label() {
        return label;
    }

    /** Returns the region of a content key; throws {@link IllegalArgumentException} for any other text. */
    public static BodyRegion of(String key) {
        for (BodyRegion region : values()) {
            if (region.key().equals(key)) {
                return region;
            }
        }
        throw new IllegalArgumentException("There is no body region '" + key + "'");
    }
}
