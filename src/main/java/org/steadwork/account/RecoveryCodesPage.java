package org.steadwork.account;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;

/** The page that shows recovery codes, this once. */
final class RecoveryCodesPage {

    @CheckedTemplate(basePath = "account", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance recoveryCodes(List<String> codes, String to);
    }

    private RecoveryCodesPage() {
    }

    /** @param to where the page leads on to, a path of our own */
    static TemplateInstance of(List<String> codes, String to) {
        return Templates.recoveryCodes(codes, to);
    }
}
