package org.steadwork.journey;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jsoup.Connection.KeyVal;
import org.jsoup.Jsoup;
import org.jsoup.nodes.FormElement;
import org.steadwork.web.Visitor;

/** One signed-in client that does little itself, so that what is measured is the server: times from the request to the whole answer, in nanoseconds. */
final class BenchClient {

    private static final Pattern FIRST_RUN = Pattern.compile("/first-run\\?key=[\\w-]+");
    private static final String PASSWORD = "a long bench password";

    private final HttpClient client = HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NEVER).build();
    private final URI clinic;
    private final String cookie;

    private BenchClient(URI clinic, String cookie) {
        this.clinic = clinic;
        this.cookie = cookie;
    }

    /** Makes the first account of a clinic that has none. */
    static void makeTheLead(PackagedApplication application) {
        Matcher link = FIRST_RUN.matcher(application.log());
        if (!link.find()) {
            throw new IllegalStateException("no first-run link in the log");
        }
        Visitor lead = new Visitor(application.address());
        lead.open(link.group());
        lead.submit(lead.page().select("main form").attr("action"), Map.of("userName", "bench", "fullName", "Bench Lead", "displayName", "B. Lead", "password", PASSWORD,
                "passwordAgain", PASSWORD));
        if (lead.status() != 200) {
            throw new IllegalStateException(lead.page().text());
        }
    }

    static BenchClient signIn(PackagedApplication application) {
        Visitor lead = new Visitor(application.address());
        lead.open("/sign-in");
        lead.submit("/sign-in", Map.of("userName", "bench", "password", PASSWORD));
        return new BenchClient(application.address(), "steadwork-session=" + lead.sessionToken());
    }

    /** Waits until all cases of a large clinic have been looked at once. */
    void awaitToday() throws IOException, InterruptedException {
        long end = System.nanoTime() + TimeUnit.MINUTES.toNanos(5);
        while (send(request("/?who=all").build()).body().contains("may be out of date")) {
            if (System.nanoTime() > end) {
                throw new IllegalStateException("Today does not come up to date");
            }
            TimeUnit.MILLISECONDS.sleep(500);
        }
    }

    long get(String path) throws IOException, InterruptedException {
        return timed(request(path).build(), 200);
    }

    /** A part of a page, as the page itself asks for it while somebody types. */
    long fragment(String path) throws IOException, InterruptedException {
        return timed(request(path).header("HX-Request", "true").build(), 200);
    }

    /** Opens a page, fills its form of this action and times nothing but sending it. */
    long post(String page, String action, Map<String, String> changes) throws IOException, InterruptedException {
        String target = action.isEmpty() ? page : action;
        HttpResponse<String> opened = send(request(page).build());
        String token = opened.headers().allValues("set-cookie").stream().map(one -> "; " + one.replaceFirst(";.*", "")).collect(Collectors.joining());
        FormElement form = (FormElement) Jsoup.parse(opened.body()).select("form[method=post]").stream().filter(one -> one.attr("action").equals(target)).findFirst()
                .orElseThrow(() -> new IllegalStateException("no form to " + target + " on " + page));
        List<KeyVal> values = new ArrayList<>(form.formData());
        values.removeIf(value -> changes.containsKey(value.key()));
        String body = values.stream().map(value -> encoded(value.key()) + "=" + encoded(value.value())).collect(Collectors.joining("&"))
                + changes.entrySet().stream().map(change -> "&" + encoded(change.getKey()) + "=" + encoded(change.getValue())).collect(Collectors.joining());
        return timed(request(target).setHeader("Cookie", cookie + token).header("Content-Type", "application/x-www-form-urlencoded").POST(HttpRequest.BodyPublishers.ofString(body)).build(), 303);
    }

    /** Returns how many Map pages so many visitors at once get in a second. */
    double aSecond(int visitors, int seconds, long[] ids) throws InterruptedException {
        AtomicInteger answered = new AtomicInteger();
        long began = System.nanoTime();
        long end = began + TimeUnit.SECONDS.toNanos(seconds);
        List<Thread> threads = new ArrayList<>();
        for (int i = 0; i < visitors; i++) {
            int from = i * 31;
            threads.add(new Thread(() -> {
                for (int number = from; System.nanoTime() < end; number++) {
                    try {
                        get("/cases/" + ids[number % ids.length]);
                    } catch (IOException | InterruptedException e) {
                        throw new IllegalStateException(e);
                    }
                    answered.incrementAndGet();
                }
            }));
        }
        threads.forEach(Thread::start);
        for (Thread thread : threads) {
            thread.join();
        }
        return answered.get() / ((System.nanoTime() - began) / 1e9);
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(clinic.resolve(path)).header("Cookie", cookie).header("Accept", "text/html");
    }

    private long timed(HttpRequest request, int status) throws IOException, InterruptedException {
        long began = System.nanoTime();
        HttpResponse<String> answer = send(request);
        long taken = System.nanoTime() - began;
        if (answer.statusCode() != status) {
            throw new IllegalStateException(request.method() + " " + request.uri() + " answered " + answer.statusCode() + ": " + Jsoup.parse(answer.body()).text());
        }
        return taken;
    }

    private HttpResponse<String> send(HttpRequest request) throws IOException, InterruptedException {
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
