package org.steadwork.meeting;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;

/** The answer to whoever still writes in a meeting that was closed meanwhile: nothing is changed, and what was typed is shown again. */
final class Shut {

    @CheckedTemplate(basePath = "meeting", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance shut(ReviewMeeting meeting, String why, List<String> typed);
    }

    private Shut() {
    }

    static Response answer(ReviewMeeting meeting, Form form, String why) {
        List<String> typed = form.fields().stream().filter(field -> !field.equals("csrf-token") && !field.endsWith("version"))
                .flatMap(field -> form.values(field).stream()).map(String::strip).filter(value -> !value.isEmpty()).toList();
        return Answers.conflict(Templates.shut(meeting, why, typed));
    }

    static Optional<Response> answer(MeetingDesk desk, ReviewMeeting meeting, Form form) {
        return desk.shut(meeting).map(why -> answer(meeting, form, why));
    }
}
