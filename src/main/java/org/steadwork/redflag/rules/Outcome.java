package org.steadwork.redflag.rules;

/** The named outcomes of the published rules. */
public enum Outcome {
    IMAGING_BY_RULE("imaging by the rule", true),
    NO_IMAGING_BY_RULE("no imaging by the rule", false),
    XRAY_BY_RULE("X-ray by the rule", true),
    NO_XRAY_BY_RULE("no X-ray by the rule", false),
    LIKELY("likely", true),
    UNLIKELY("unlikely", false),
    MET("criteria met", true),
    NOT_MET("criteria not met", false),
    REFER_RHEUM("refer to rheumatology", true),
    ASK_GP_HLA_B27("ask the GP about an HLA-B27 test", true),
    BELOW_CRITERIA("below the criteria", false),
    CLUSTER_POSITIVE("cluster positive", true),
    INTERMEDIATE("intermediate", false),
    LOW("low", false),
    PATTERN_MET("pattern met", true),
    PATTERN_NOT_MET("pattern not met", false),
    NOT_APPLICABLE("the rule does not apply", false),
    /** Acted on as if the rule were positive. */
    INCOMPLETE("incomplete: act as if positive", true);

    private final String label;
    private final boolean calls;

    Outcome(String label, boolean calls) {
        this.label = label;
        this.calls = calls;
    }

    public String label() {
        return label;
    }

    /** True when the outcome calls for the rule's action; an incomplete rule does. */
    public boolean callsForAction() {
        return calls;
    }
}
