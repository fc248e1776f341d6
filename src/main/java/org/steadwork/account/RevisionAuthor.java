package org.steadwork.account;

import io.quarkus.arc.Arc;
import io.quarkus.security.identity.SecurityIdentity;
import org.hibernate.envers.RevisionListener;

/** Puts the name of who is signed in on a revision; what the product does by itself is signed Steadwork. */
public class RevisionAuthor implements RevisionListener {

    @Override
    public void newRevision(Object revision) {
        String author = "Steadwork";
        if (Arc.container() != null && Arc.container().requestContext().isActive()) {
            SecurityIdentity identity = Arc.container().instance(SecurityIdentity.class).get();
            if (!identity.isAnonymous()) {
                author = identity.getAttribute("display-name");
            }
        }
        ((ClinicRevision) revision).author(author);
    }
}
