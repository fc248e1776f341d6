package org.steadwork.exchange.csv;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedFile;
import org.steadwork.web.PostedForm;

/** Taking in a file: upload, dry run, then everything in one transaction or nothing. */
@Path("/clinic/import")
@RolesAllowed("lead")
class ImportPages {

    @CheckedTemplate(basePath = "exchange", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance importNew(List<ImportKind> kinds, List<Option> choices, Form form, List<ImportJobs.Listed> latest);

        static native TemplateInstance importJob(ImportJob job, String label, List<ImportKind.Problem> problems, List<ImportKind.LikelyDouble> doubles, Form form, String said);
    }

    static final int LARGEST_FILE = 11 * 1024 * 1024;

    @Inject
    ImportJobs jobs;

    @Inject
    ImportRun run;

    @Inject
    EntityManager db;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response choose() {
        return Answers.page(chooser(Form.empty()));
    }

    private TemplateInstance chooser(Form form) {
        List<ImportKind> kinds = jobs.kinds();
        return Templates.importNew(kinds, kinds.stream().map(kind -> new Option(kind.key(), kind.label())).toList(), form, jobs.latest());
    }

    @POST
    public Response upload() {
        Form form = posted.read();
        Optional<ImportKind> kind = jobs.kind(form.value("kind"));
        if (kind.isEmpty()) {
            form.error("kind", "Choose what the file holds.");
        }
        Optional<PostedFile> file = posted.file("file", LARGEST_FILE);
        String text = null;
        if (file.isEmpty()) {
            form.error("file", "Choose a CSV file.");
        } else if (file.get().bytes().length > LARGEST_FILE) {
            form.error("file", "The file is larger than 11 MB. Part it and take the parts in one after the other.");
        } else {
            try {
                text = CsvText.decode(file.get().bytes());
            } catch (CsvText.NoTable e) {
                form.error("file", e.getMessage());
            }
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(chooser(form));
        }
        long job = jobs.begin(kind.get(), kind.get().label() + ".csv", text);
        run.check(job);
        return Answers.seeOther("/clinic/import/" + job);
    }

    @GET
    @Path("/template-{list}.csv")
    public Response template(@RestPath String list) {
        ImportKind found = jobs.kind(list).orElseThrow(NotFoundException::new);
        byte[] file = CsvText.write(found.columns().stream().map(ImportKind.Column::name).toList(), List.of(found.columns().stream().map(ImportKind.Column::example).toList()), true);
        return Response.ok(file, "text/csv;charset=utf-8").header("Content-Disposition", "attachment; filename=\"" + list + "-template.csv\"").build();
    }

    @GET
    @Path("/{job: \\d+}")
    public Response job(@RestPath long job) {
        return Answers.page(page(find(job), Form.empty(), null));
    }

    private TemplateInstance page(ImportJob job, Form form, String said) {
        return Templates.importJob(job, jobs.kind(job.kind()).map(ImportKind::label).orElse(job.kind()).toLowerCase(Locale.ROOT), run.problems(job), run.doubles(job), form, said);
    }

    @GET
    @Path("/{job: \\d+}/problems.csv")
    public Response problems(@RestPath long job) {
        ImportJob found = find(job);
        byte[] file = CsvText.write(List.of("row", "column", "problem"), run.problems(found).stream().map(one -> List.<Object>of(one.row(),
                one.column() == null ? "" : one.column(), one.message())).toList(), true);
        return Response.ok(file, "text/csv;charset=utf-8").header("Cache-Control", "no-store").header("Content-Disposition", "attachment; filename=\"problems.csv\"").build();
    }

    @POST
    @Path("/{job: \\d+}/store")
    public Response store(@RestPath long job) {
        find(job);
        Form form = posted.read();
        String refused = begin(job, form);
        if (refused != null) {
            return Answers.conflict(page(find(job), form, refused));
        }
        run.store(job);
        return Answers.seeOther("/clinic/import/" + job);
    }

    /** Puts the job into the state of being stored, once; returns why not. */
    @Transactional
    String begin(long id, Form form) {
        ImportJob job = db.find(ImportJob.class, id, LockModeType.PESSIMISTIC_WRITE);
        if (form.version() != job.version() || !job.canStore()) {
            return "This import is " + job.state().label() + (job.problemCount() > 0 ? " and has problems" : "") + ". It was not begun again.";
        }
        job.beginStoring(form.ticked("withDoubles"), Instant.now(clock));
        return null;
    }

    @POST
    @Path("/{job: \\d+}/discard")
    @Transactional
    public Response discard(@RestPath long job) {
        ImportJob found = find(job);
        Form form = posted.read();
        if (form.version() != found.version() || !found.canDiscard()) {
            return Answers.conflict(page(found, form, "This import is " + found.state().label() + ". It was left as it is."));
        }
        found.discard(Instant.now(clock));
        audit.record("discarded a file", null, null, found.kind());
        return Answers.seeOther("/clinic/import");
    }

    private ImportJob find(long job) {
        return jobs.find(job).orElseThrow(NotFoundException::new);
    }
}
