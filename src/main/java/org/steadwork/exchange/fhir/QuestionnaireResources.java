package org.steadwork.exchange.fhir;

import java.util.List;
import org.hl7.fhir.r4.model.Enumerations.PublicationStatus;
import org.hl7.fhir.r4.model.IntegerType;
import org.hl7.fhir.r4.model.Questionnaire;
import org.hl7.fhir.r4.model.Questionnaire.QuestionnaireItemComponent;
import org.hl7.fhir.r4.model.QuestionnaireResponse;
import org.steadwork.outcome.Score;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.Item;
import org.steadwork.web.Dates;

/**
 * The instruments as Questionnaire and what was answered as QuestionnaireResponse. Items carry their number; a topic of our own goes along only
 * where the instrument is asked in our own words or its official form may be named, never the owner's wording.
 */
final class QuestionnaireResources {

    private static final String LEAST = "http://hl7.org/fhir/StructureDefinition/minValue";
    private static final String MOST = "http://hl7.org/fhir/StructureDefinition/maxValue";

    private final Subject about;

    QuestionnaireResources(Subject about) {
        this.about = about;
    }

    /** Adds the answers of a score, and the questionnaire they belong to when it is not there yet; returns the name of the answers. */
    String add(Score score, Instrument instrument) {
        String form = "questionnaire " + instrument.key() + " " + score.instrumentVersion();
        if (!about.draft().has(form)) {
            about.draft().add(form, questionnaire(form, instrument, score.instrumentVersion()), "The items of " + instrument.name() + " by number");
        }
        QuestionnaireResponse response = new QuestionnaireResponse().setStatus(QuestionnaireResponse.QuestionnaireResponseStatus.COMPLETED)
                .setQuestionnaire(canonical(form)).setSubject(about.patient()).setSource(about.patient());
        response.setAuthoredElement(Codes.day(score.scoredOn()));
        List<Integer> answers = score.answers();
        for (int i = 0; i < answers.size(); i++) {
            // an item without an answer is left out: nothing is put in its place
            if (answers.get(i) != null) {
                response.addItem().setLinkId(String.valueOf(instrument.items().get(i).number())).addAnswer().setValue(new IntegerType(answers.get(i)));
            }
        }
        String name = "answers " + score.id();
        about.draft().add(name, response, instrument.name() + ", answers of " + Dates.shown(score.scoredOn()));
        return name;
    }

    /** The name of the form itself, apart from the address of its copy in a bundle. */
    private String canonical(String form) {
        return about.draft().address("canonical " + form);
    }

    private Questionnaire questionnaire(String form, Instrument instrument, String version) {
        Questionnaire questionnaire = new Questionnaire().setUrl(canonical(form)).setVersion(version).setStatus(PublicationStatus.ACTIVE)
                .setTitle(instrument.name()).setName("Instrument_" + instrument.key().replaceAll("\\W", "_")).setExperimental(false)
                .setCopyright(instrument.form().notice() + " " + instrument.permission());
        questionnaire.addSubjectType("Patient");
        for (Item item : instrument.items()) {
            QuestionnaireItemComponent asked = questionnaire.addItem().setLinkId(String.valueOf(item.number())).setType(Questionnaire.QuestionnaireItemType.INTEGER);
            asked.setText("Item " + item.number() + (item.topic().isEmpty() ? "" : ": " + item.topic()));
            asked.addExtension(LEAST, new IntegerType(item.min()));
            asked.addExtension(MOST, new IntegerType(item.max()));
        }
        return questionnaire;
    }
}
