package org.steadwork.web;

import jakarta.enterprise.context.RequestScoped;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import org.jboss.resteasy.reactive.server.core.CurrentRequestManager;
import org.jboss.resteasy.reactive.server.core.multipart.FormData;

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
}
