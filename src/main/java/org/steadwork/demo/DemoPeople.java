package org.steadwork.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.steadwork.content.Entry;
import org.steadwork.people.Correspondent;
import org.steadwork.people.Directory;
import org.steadwork.people.Employer;
import org.steadwork.people.EmployerContact;
import org.steadwork.people.Employers;
import org.steadwork.people.Handedness;
import org.steadwork.people.Patient;
import org.steadwork.people.Patients;
import org.steadwork.people.Sex;
import org.steadwork.people.Site;

/** The invented people around a case: employers and sites, doctors and other readers of letters, the patient. */
@ApplicationScoped
class DemoPeople {

    @Inject
    Employers employers;

    @Inject
    Directory directory;

    @Inject
    Patients patients;

    @Inject
    DemoRegister register;

    void addressBook(Entry clinic) {
        for (Entry entry : clinic.entries("employers")) {
            Employer employer = directory.employer(entry.text("name"));
            Entry first = entry.entries("sites").get(0);
            employer.contactAt(entry.text("contact") + ", " + entry.text("contact_role"), address(entry.text("name"), first),
                    entry.text("phone"), entry.text("email"));
            contact(employer, entry);
            entry.entries("sites").forEach(written -> {
                Site site = directory.site(employer, written.text("name"));
                site.standsAt(site.name(), address(entry.text("name"), written));
                register.load(site, written);
            });
        }
        for (Entry entry : clinic.entries("correspondents")) {
            Correspondent reader = directory.correspondent(entry.constant("kind", Correspondent.Kind.class), entry.text("name"));
            reader.contactAt(entry.text("organisation"), address(entry.text("organisation"), entry), entry.text("phone"), entry.text("email"));
        }
    }

    private void contact(Employer employer, Entry written) {
        EmployerContact contact = new EmployerContact(employer);
        contact.is(written.text("contact"), written.text("contact_role"), written.text("phone"), written.text("email"));
        employers.keep(contact);
    }

    Patient register(Entry demo, Entry clinic) {
        Entry person = demo.entry("person").orElseThrow(() -> demo.problem("'person' is missing"));
        Entry work = demo.entry("case").orElseThrow(() -> demo.problem("'case' is missing"));
        Patient patient = new Patient(patients.nextFileNumber(), person.text("given"), person.text("family"),
                LocalDate.parse(person.text("born")), LocalDate.parse(work.text("opened")));
        patient.describe(person.constant("sex", Sex.class), person.constant("handed", Handedness.class));
        Entry employed = keyed(clinic, "employers", demo.text("employer"));
        Employer employer = directory.employer(employed.text("name"));
        Site site = directory.site(employer, keyed(employed, "sites", demo.text("site")).text("name"));
        patient.worksAs(work.text("job"), employer, site, null, new BigDecimal(work.text("hours_per_week")));
        person.optionalText("doctor").ifPresent(key -> patient.seesDoctor(correspondent(clinic, key)));
        patient.contactAt(person.text("phone"), person.text("email"),
                person.text("street") + "\n" + person.text("place") + " " + person.text("postcode"));
        patients.persist(patient);
        return patient;
    }

    Correspondent correspondent(Entry clinic, String key) {
        Entry entry = keyed(clinic, "correspondents", key);
        return directory.correspondent(entry.constant("kind", Correspondent.Kind.class), entry.text("name"));
    }

    static Entry keyed(Entry holder, String list, String key) {
        return holder.entries(list).stream().filter(entry -> entry.text("key").equals(key)).findFirst()
                .orElseThrow(() -> holder.problem("'" + list + "' holds no '" + key + "'"));
    }

    private static String address(String name, Entry place) {
        return name + "\n" + place.text("street") + "\n" + place.text("place") + " " + place.text("postcode");
    }
}
