package org.steadwork.web;

import jakarta.enterprise.context.RequestScoped;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.jboss.resteasy.reactive.server.core.CurrentRequestManager;
import org.jboss.resteasy.reactive.server.core.multipart.FormData;
import org.jboss.resteasy.reactive.server.multipart.FormValue;

/** Hands a page the form of the running request, all fields as the texts that were sent. */
@RequestScoped
public class PostedForm {

    public Form read() {
        MultivaluedMap<String, String> values = new MultivaluedHashMap<>();
        FormData sent = CurrentRequestManager.get().getFormData();
        if (sent != null) {
            for (String name : sent) {
                sent.get(name).stream().filter(value -> !value.isFileItem()).forEach(value -> values.add(name, value.getValue()));
            }
        }
        return Form.of(values);
    }

    /**
     * Returns the file that was chosen in a field, if one was.
     *
     * @param most bytes wanted; of a longer file one byte more is read, so that its length can be judged
     */
    public Optional<PostedFile> file(String field, int most) {
        FormData sent = CurrentRequestManager.get().getFormData();
        if (sent == null || sent.get(field) == null) {
            return Optional.empty();
        }
        for (FormValue value : sent.get(field)) {
            if (value.isFileItem() && value.getFileName() != null && !value.getFileName().isBlank()) {
                try (InputStream in = value.getFileItem().getInputStream()) {
                    return Optional.of(new PostedFile(in.readNBytes(most + 1)));
                } catch (IOException e) {
                    throw new UncheckedIOException("A file that was sent could not be read", e);
                }
            }
        }
        return Optional.empty();
    }
}
