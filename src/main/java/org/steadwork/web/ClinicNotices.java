package org.steadwork.web;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;

/** All notices for the page Clinic. */
@Named("clinicNotices")
@ApplicationScoped
public class ClinicNotices {

    @Inject
    @Any
    Instance<ClinicNotice> notices;

    public List<ClinicNotice.Line> all() {
        return notices.stream().flatMap(notice -> notice.lines().stream()).toList();
    }
}
