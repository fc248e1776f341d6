package org.steadwork.account;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class BrowserNameTest {

    @Test
    void theCommonBrowsersAreTold() {
        assertEquals("Firefox on Windows", BrowserName.of("Mozilla/5.0 (Windows NT 10.0; Win64; x64; rv:140.0) Gecko/20100101 Firefox/140.0"));
        assertEquals("Chrome on Linux", BrowserName.of("Mozilla/5.0 (X11; Linux x86_64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/140.0.0.0 Safari/537.36"));
        assertEquals("Edge on Windows", BrowserName.of("Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/140.0.0.0 Safari/537.36 Edg/140.0.0.0"));
        assertEquals("Safari on iPhone", BrowserName.of("Mozilla/5.0 (iPhone; CPU iPhone OS 18_0 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.0 Mobile/15E148 Safari/604.1"));
        assertEquals("Chrome on Android", BrowserName.of("Mozilla/5.0 (Linux; Android 14; Pixel 8) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/140.0.0.0 Mobile Safari/537.36"));
        assertEquals("Safari on Mac", BrowserName.of("Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.0 Safari/605.1.15"));
        assertEquals("another program", BrowserName.of("curl/8.5.0"));
        assertEquals("not named", BrowserName.of(" "));
        assertEquals("not named", BrowserName.of(null));
    }
}
