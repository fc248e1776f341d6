package org.steadwork.account;

import org.steadwork.web.QrDrawing;

/**
 * A key for one-time codes as the page offers it.
 *
 * @param drawing the QR code as SVG
 * @param key what is typed where no camera is
 */
public record CodeOffer(String drawing, String key, String userName) {

    static final String WRONG = "This is not the code of this key. Type the six digits that the application shows now.";

    static CodeOffer of(SecondFactors factors, Account account) {
        return new CodeOffer(QrDrawing.svg(factors.address(account), "The key for one-time codes as a code to scan"), factors.typedKey(account),
                account.userName());
    }
}
