package org.steadwork.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.bench.Calculators;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** The calculators of outcomes and of the work plan by JSON; the figures are those of the vectors beside the pure parts. */
@QuarkusTest
class OutcomeCalculatorsTest {

    @Inject
    TestAccounts accounts;

    @Inject
    Instruments instruments;

    @Inject
    Calculators calculators;

    private Visitor clinician;

    @BeforeEach
    void signIn() {
        clinician = accounts.visitor(Role.CLINICIAN);
    }

    @Test
    void everyInstrumentIsACalculator() {
        instruments.all().forEach(one -> assertTrue(calculators.named("score/" + one.key()).isPresent(), one.key()));
        List.of("change", "goal-attainment", "grip", "range-of-motion", "work-plan")
                .forEach(key -> assertTrue(calculators.named(key).isPresent(), key));
    }

    @Test
    void aScoreWithAMissingItemIsMarked() {
        JsonPath ndi = good("score/ndi", "{'answers':[2,1,3,2,2,1,2,null,2,1]}");
        assertEquals(35.5556, ndi.getDouble("result.value"), 0.00005);
        assertTrue(ndi.getBoolean("result.estimated"));
        assertEquals(List.of(8), ndi.getList("result.missing"));
        assertEquals("35.6", ndi.getString("headlines[0].value"));
        JsonPath none = good("score/ndi", "{'answers':[2,1,3]}");
        assertNull(none.getString("result.value"));
        assertTrue(none.getString("band").startsWith("No score"), none.getString("band"));
        JsonPath open = good("score/startback", "{'answers':[1,1,1,null,0,0,0,0,0]}");
        assertEquals(List.of("medium", "low"), open.getList("result.groups"));
        assertTrue(open.getList("limits").toString().contains("the clinic must hold"));
        assertEquals(3.0, good("score/nmq", "{'answers':[1,0,1,1,0,0,0,0,0,0,0,0,0,0,0,1,1,1]}").getDouble("result.parts.'trouble in the last 12 months'"));
    }

    @Test
    void anInvalidAnswerIsRefusedAtItsItem() {
        assertEquals(List.of("answers[0]"), refused("score/nprs_worst", "{'answers':[11]}"));
        assertEquals(List.of("answers[0]"), refused("score/was", "{'answers':[3.5]}"));
        assertEquals(List.of("answers"), refused("score/bctq_fss", "{'answers':[1,1,1,1,1,1,1,1,1]}"));
        assertEquals(List.of("answers[1]"), refused("score/nmq", "{'answers':[0,1,0]}"));
    }

    // ODI 62, 50, 40, 38 in weeks 0, 2, 4, 6: slope -4.5 a week (SciPy, tag C)
    @Test
    void aCourseIsJudged() {
        String course = "{'instrument':'odi21a','region':'low_back','scores':[{'on':'2030-09-02','score':62},{'on':'2030-09-16','score':50},"
                + "{'on':'2030-09-30','score':40},{'on':'2030-10-14','score':38}]";
        JsonPath answer = good("change", course + ",'rating_scale':'groc15','rating':0}");
        assertEquals("important", answer.getString("result.since_first"));
        assertEquals(-4.5, answer.getDouble("result.slope_a_week"), 1e-9);
        assertEquals("2030-10-31", answer.getString("result.measure_again_from"));
        assertTrue(answer.getBoolean("result.rating_disagrees"));
        assertEquals("M", answer.getString("result.errors[0].tag"));
        assertEquals(List.of("rating"), refused("change", course + ",'rating_scale':'groc11','rating':6}"));
        assertEquals(List.of("rating_scale"), refused("change", course + ",'rating':6}"));
    }

    @Test
    void aWorseningStandsFirst() {
        JsonPath answer = good("change", "{'instrument':'ndi','region':'neck','scores':[{'on':'2030-09-02','score':60},{'on':'2030-09-16','score':30},"
                + "{'on':'2030-09-30','score':44}]}");
        assertTrue(answer.getString("band").startsWith("Worse since the last score"), answer.getString("band"));
        assertTrue(answer.getBoolean("result.alerts"));
    }

    @Test
    void aCourseThatIsNoneIsRefusedAtItsField() {
        String course = "{'instrument':'odi21a','scores':[{'on':'2030-09-02','score':62},{'on':'%s','score':%s}]}";
        assertEquals(List.of("scores[1].on"), refused("change", course.formatted("2030-09-02", "50")));
        assertEquals(List.of("scores[1].score"), refused("change", course.formatted("2030-09-03", "-1")));
        assertEquals(List.of("scores[1].on"), refused("change", course.formatted("+999999999-12-31", "50")));
        assertEquals(List.of("scores"), refused("change", "{'instrument':'odi21a','scores':[{'on':'2030-09-02','score':62}]}"));
        assertEquals(List.of("instrument"), refused("change", course.replace("odi21a", "ompsq_sf").formatted("2030-09-03", "50")));
    }

    // weights 3, 2, 1 and ratings 1, 0, -1: T 54.4065 (Kiresuk and Sherman 1968, tag C)
    @Test
    void goals() {
        JsonPath answer = good("goal-attainment", "{'goals':[{'goal':'a','importance':3,'at_start':-1,'now':1},{'goal':'b','importance':2,'at_start':-1,'now':0},"
                + "{'goal':'c','at_start':-1,'now':-1},{'goal':'d','at_start':-1,'now':2,'withdrawn':'moved house'}]}");
        assertEquals(54.4065, answer.getDouble("result.t_now"), 0.00005);
        assertEquals("withdrawn: moved house", answer.getString("result.left_out[0].reason"));
        assertEquals(List.of("goals[0].now"), refused("goal-attainment", "{'goals':[{'goal':'a','at_start':-1,'now':3}]}"));
        assertEquals(List.of("goals"), refused("goal-attainment", "{'goals':[{'goal':'a','at_start':-1}]}"));
    }

    // man of 47, right hand, 34, 36, 35 kg: z -1.42, 70.2 % of the norm (tag C)
    @Test
    void grip() {
        JsonPath answer = good("grip", "{'hand':'right','trial1':34,'trial2':36,'trial3':35,'age':47,'norms_of':'men','other_hand':42,'earlier':30}");
        assertEquals(-1.42, answer.getDouble("result.z"), 0.005);
        assertEquals(70.2, answer.getDouble("result.percent_of_norm"), 0.05);
        assertEquals(7.0, answer.getDouble("result.deficit_kg"), 1e-9);
        assertEquals("no_real_change", answer.getString("result.change_is"));
        JsonPath stopped = good("grip", "{'hand':'right'}");
        assertNull(stopped.getString("result.mean_kg"));
        assertFalse(stopped.getString("band").contains("0"));
        assertEquals(List.of("trial1"), refused("grip", "{'hand':'right','trial1':101}"));
    }

    // wrist extension 50 and 68 degrees: deficit 18, 73.5 % of the other side (tag C)
    @Test
    void motion() {
        JsonPath answer = good("range-of-motion", "{'motion':'wrist_extension','side':'left','degrees':50,'device':'goniometer','other_side':68,'earlier':60,"
                + "'measured_by':'one'}");
        assertEquals(73.5, answer.getDouble("result.percent_of_other"), 0.05);
        assertEquals("worse", answer.getString("result.change_is"));
        assertFalse(answer.getBoolean("result.alerts"), "the error is from memory");
        assertEquals("Not measured: arm in a sling", good("range-of-motion",
                "{'motion':'wrist_extension','side':'left','device':'goniometer','not_measured':'arm in a sling'}").getString("band"));
        assertEquals(List.of("degrees"), refused("range-of-motion", "{'motion':'wrist_extension','side':'left','device':'goniometer'}"));
        assertEquals(List.of("side"), refused("range-of-motion", "{'motion':'cervical_flexion','side':'left','device':'inclinometer','degrees':50}"));
        assertEquals(List.of("degrees"), refused("range-of-motion", "{'motion':'wrist_radial','side':'left','device':'goniometer','degrees':91}"));
    }

    // plan B: 37.5 h, 50 %, three weeks: 19, 25, 31.5, 37 h not worked
    @Test
    void workPlan() {
        JsonPath answer = good("work-plan", "{'normal_hours':37.5,'start_percent':50,'weeks':3}");
        assertEquals(List.of(1140, 1500, 1890, 2250), answer.getList("result.weeks.minutes"));
        assertEquals(2220, answer.getInt("result.minutes_not_worked"));
        // 7 March 2030 is a Thursday: the weeks run from Thursday, and the middle day kept free is Monday
        JsonPath thursday = good("work-plan", "{'normal_hours':37.5,'start_percent':50,'weeks':3,'starts_on':'2030-03-07'}");
        assertEquals(List.of("2030-03-07", "2030-03-14", "2030-03-21", "2030-03-28"), thursday.getList("result.weeks.from"));
        assertEquals(List.of(1140, 1500, 1890, 2250), thursday.getList("result.weeks.minutes"));
        assertEquals(0, thursday.getInt("result.weeks[0].days.monday"));
        assertEquals(0, answer.getInt("result.weeks[0].days.wednesday"), "without a first day the week begins on Monday");
        assertNull(answer.getString("result.weeks[0].from"));
        assertEquals(List.of("start_percent", "weeks"), refused("work-plan", "{'normal_hours':37.5,'start_percent':100,'weeks':0}"));
        assertEquals(List.of("monday"), refused("work-plan", "{'normal_hours':37.5,'start_percent':50,'weeks':3,'monday':false,'tuesday':false,"
                + "'wednesday':false,'thursday':false,'friday':false}"));
    }

    private JsonPath good(String key, String body) {
        Response answer = clinician.json("/api/calculate/" + key, body.replace('\'', '"'));
        assertEquals(200, answer.statusCode(), answer.asString());
        return answer.jsonPath();
    }

    private List<String> refused(String key, String body) {
        Response answer = clinician.json("/api/calculate/" + key, body.replace('\'', '"'));
        assertEquals(422, answer.statusCode(), answer.asString());
        assertTrue(answer.contentType().startsWith("application/problem+json"), answer.contentType());
        return answer.jsonPath().getList("errors.field", String.class);
    }
}
