package org.steadwork.ownpage;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;

/** What the patient said of one zone of the body chart, or of one own activity. Every number is in [0, 10] or null. */
@Embeddable
public class OwnReportLine {

    private static final String ACTIVITY = "activity-";

    private String about;

    @Column(name = "pain_now")
    private Integer now;

    @Column(name = "pain_worst")
    private Integer worst;

    @Column(name = "pain_average")
    private Integer average;

    private Integer rating;

    protected OwnReportLine() {
    }

    private OwnReportLine(String about, Integer now, Integer worst, Integer average, Integer rating) {
        this.about = about;
        this.now = now;
        this.worst = worst;
        this.average = average;
        this.rating = rating;
    }

    public static OwnReportLine ofZone(String zone, Integer now, Integer worst, Integer average) {
        return new OwnReportLine(zone, now, worst, average, null);
    }

    static OwnReportLine ofActivity(long activity, Integer rating) {
        return new OwnReportLine(ACTIVITY + activity, null, null, null, rating);
    }

    public boolean isActivity() {
        return about.startsWith(ACTIVITY);
    }

    /** Key of the zone; of an activity its number. */
    public String about() {
        return isActivity() ? about.substring(ACTIVITY.length()) : about;
    }

    public Integer now() {
        return now;
    }

    public Integer worst() {
        return worst;
    }

    public Integer average() {
        return average;
    }

    public Integer rating() {
        return rating;
    }
}
