package org.steadwork.redflag;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.steadwork.web.ReadOnce;

/** The screens of the cases. */
@ApplicationScoped
public class RedFlagScreens implements PanacheRepository<RedFlagScreen> {

    /** The newest screen of a case with its answers. */
    @ReadOnce
    public Optional<RedFlagScreen> latest(long caseId) {
        return find("from RedFlagScreen s left join fetch s.answers left join fetch s.signedBy join fetch s.begunBy where s.id ="
                + " (select max(n.id) from RedFlagScreen n where n.caseFile.id = ?1)", caseId).stream().findFirst();
    }

    /** The newest screen of a case up to a day, with its answers. */
    Optional<RedFlagScreen> latest(long caseId, LocalDate until) {
        return find("from RedFlagScreen s left join fetch s.answers left join fetch s.signedBy join fetch s.begunBy where s.id ="
                + " (select max(n.id) from RedFlagScreen n where n.caseFile.id = ?1 and n.screenedOn <= ?2)", caseId, until).stream().findFirst();
    }

    Optional<RedFlagScreen> withAnswers(long caseId, long screenId) {
        return find("from RedFlagScreen s left join fetch s.answers left join fetch s.signedBy join fetch s.begunBy"
                + " where s.id = ?1 and s.caseFile.id = ?2", screenId, caseId).stream().findFirst();
    }

    /** All screens of a case, the newest first, without their answers. */
    public List<RedFlagScreen> of(long caseId) {
        return list("from RedFlagScreen s join fetch s.begunBy left join fetch s.signedBy left join fetch s.visit"
                + " where s.caseFile.id = ?1 order by s.id desc", caseId);
    }
}
