package org.steadwork.backup;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.nio.file.Files;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** The lead's page of backups: what was made, whether it failed, and one at once. */
@Path("/clinic/backup")
@RolesAllowed("lead")
class BackupPages {

    @CheckedTemplate(basePath = "backup", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance backups(Shown shown, Form form);
    }

    /**
     * What the page shows.
     *
     * @param trouble what is wrong with the key; null when it can be used
     */
    public record Shown(List<BackupRun> runs, List<String> files, String folder, String trouble, Instant running, int everyHours, int keep, boolean scheduled) {

        public boolean has(String file) {
            return files.contains(file);
        }
    }

    private static final int PATIENCE_SECONDS = 8;

    @Inject
    Backups backups;

    @Inject
    BackupRuns runs;

    @Inject
    BackupSchedule schedule;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    PostedForm posted;

    @ConfigProperty(name = "steadwork.backup.keep")
    int keep;

    @GET
    public Response page() {
        return Answers.page(Templates.backups(shown(), Form.empty()));
    }

    /** Begins one and waits a little, so that the page mostly shows it done already. */
    @POST
    public Response make() {
        Form form = posted.read();
        Optional<Future<?>> begun = Optional.empty();
        if (trouble() != null) {
            form.error("backup", trouble() + ".");
        } else {
            audit.record("asked for a backup", null, null, null);
            begun = backups.begin(account.displayName());
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.backups(shown(), form));
        }
        begun.ifPresent(BackupPages::await);
        return Answers.seeOther("/clinic/backup");
    }

    private static void await(Future<?> begun) {
        try {
            begun.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (TimeoutException stillRunning) {
            // the page says so
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Hands out a sealed file, for a copy in another place. */
    @GET
    @Path("{file: [a-z0-9_-]+-[0-9T-]+-(?:scheduled|asked)\\.backup}")
    public Response download(@RestPath String file) {
        java.nio.file.Path found = backups.folder().resolve(file);
        if (!Backups.NAME.matcher(file).matches() || !Files.isRegularFile(found)) {
            throw new NotFoundException();
        }
        audit.record("downloaded a backup", null, null, file);
        return Response.ok(found.toFile(), "application/octet-stream").header("Content-Disposition", "attachment; filename=\"" + file + "\"")
                .header("Cache-Control", "no-store").build();
    }

    private Shown shown() {
        return new Shown(runs.latest(), backups.files().stream().map(Backups.Kept::name).toList(), backups.folder().toString(), trouble(),
                backups.running().orElse(null), schedule.everyHours(), keep, schedule.on());
    }

    private String trouble() {
        try {
            return backups.key().isPresent() ? null : "No backup key is set, and a backup is never made unsealed";
        } catch (RefusedBackupException e) {
            return e.getMessage();
        }
    }
}
