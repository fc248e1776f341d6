package org.steadwork.measure;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;

/** One clinician at work: opens pages, stops to read, and now and then saves what a page's form holds with a word changed. Own cases only are saved to. */
final class LoadClinician implements Runnable {

    /** One answer. {@code wrong} is null when it was what it should be. */
    record Answer(boolean save, String what, double milliseconds, String wrong) {
    }

    /** Of a hundred answers so many are saves; the page a save begins from counts as read. */
    private static final int SAVES_OF_A_HUNDRED = 10;
    /** Pages of a case and of the clinic, about as often as a day needs them. */
    private static final List<String> PAGES = List.of("/", "/", "/cases/#", "/cases/#", "/cases/#", "/cases/#/symptoms", "/cases/#/outcomes", "/cases/#/outcomes",
            "/cases/#/programme", "/cases/#/work-place", "/cases/#/red-flags", "/cases/#/visits", "/cases/#/letters", "/patients?q=@", "/diary", "/cases/#/due");
    private static final List<String> NAMES = List.of("alder", "hazelmere", "katya", "fen", "sore", "umar dun");
    private static final Pattern REPORT = Pattern.compile("/cases/\\d+/symptoms/\\d+");

    private final HttpClient http = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final URI clinic;
    private final String session;
    private final List<Long> all;
    private final List<Long> own;
    private final Random random;
    private final long pauseMillis;
    private final BooleanSupplier goOn;
    private final List<Answer> answers = new ArrayList<>();
    private String tokenCookie = "";

    /**
     * @param all cases that are read
     * @param own open cases that nobody else of the load saves to
     * @param pauseMillis how long a page is read on average
     */
    LoadClinician(URI clinic, String session, List<Long> all, List<Long> own, long seed, long pauseMillis, BooleanSupplier goOn) {
        this.clinic = clinic;
        this.session = session;
        this.all = all;
        this.own = own;
        this.random = new Random(seed);
        this.pauseMillis = pauseMillis;
        this.goOn = goOn;
    }

    List<Answer> answers() {
        return answers;
    }

    @Override
    public void run() {
        try {
            rest(random.nextDouble());
            while (goOn.getAsBoolean()) {
                // a save opens one page first, and sometimes two
                if (random.nextInt(100) < SAVES_OF_A_HUNDRED + 2) {
                    save();
                } else {
                    read(PAGES.get(random.nextInt(PAGES.size())).replace("#", "" + some(all)).replace("@", URLEncoder.encode(some(NAMES), StandardCharsets.UTF_8)));
                }
                rest(0.5 + random.nextDouble());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private <T> T some(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private void rest(double share) throws InterruptedException {
        TimeUnit.MILLISECONDS.sleep((long) (pauseMillis * share));
    }

    private void save() throws InterruptedException {
        long file = some(own);
        boolean symptoms = random.nextBoolean();
        String page = "/cases/" + file + (symptoms ? "/symptoms" : "/edit");
        String body = read(page);
        if (symptoms) {
            Matcher report = REPORT.matcher(body);
            if (!report.find()) {
                return;
            }
            page = report.group();
            body = read(page);
        }
        rest(0.5 + random.nextDouble());
        send(page, body, symptoms ? "ownWords" : "history");
    }

    private String read(String path) {
        return ask("GET " + path.replaceAll("\\d+", "N").replaceAll("\\?.*", ""), false, HttpRequest.newBuilder(clinic.resolve(path)).GET(), 200);
    }

    private void send(String path, String body, String field) {
        Document page = Jsoup.parse(body, clinic.resolve(path).toString());
        Element written = page.selectFirst("textarea[name=" + field + "], input[name=" + field + "]");
        if (written == null || !(written.closest("form") instanceof FormElement form)) {
            answers.add(new Answer(true, "POST " + path.replaceAll("\\d+", "N"), 0, "no field " + field + " on the page"));
            return;
        }
        Map<String, List<String>> values = new LinkedHashMap<>();
        form.formData().forEach(one -> values.computeIfAbsent(one.key(), key -> new ArrayList<>()).add(one.value()));
        if (form.selectFirst("button[name=do][value=save]") != null) {
            values.put("do", List.of("save"));
        }
        values.put(field, List.of("Said " + random.nextInt(1_000_000) + " of the load"));
        String encoded = values.entrySet().stream().flatMap(one -> one.getValue().stream().map(value -> encode(one.getKey()) + "=" + encode(value)))
                .collect(Collectors.joining("&"));
        String action = form.attr("action").isEmpty() ? path : form.attr("action");
        ask("POST " + action.replaceAll("\\d+", "N"), true, HttpRequest.newBuilder(clinic.resolve(action)).header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(encoded)), 303);
    }

    private String ask(String what, boolean save, HttpRequest.Builder request, int expected) {
        long begun = System.nanoTime();
        String body = "";
        String wrong = null;
        try {
            HttpResponse<String> answer = http.send(request.header("Cookie", "steadwork-session=" + session + tokenCookie).build(), HttpResponse.BodyHandlers.ofString());
            body = answer.body();
            answer.headers().allValues("Set-Cookie").stream().filter(cookie -> cookie.startsWith("steadwork-csrf=")).findFirst()
                    .ifPresent(cookie -> tokenCookie = "; " + cookie.replaceFirst(";.*", ""));
            if (answer.statusCode() != expected) {
                wrong = answer.statusCode() + " instead of " + expected + ": " + Jsoup.parse(body).text().replaceAll("(.{300}).*", "$1");
            }
        } catch (IOException e) {
            wrong = e.toString();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return body;
        }
        answers.add(new Answer(save, what, (System.nanoTime() - begun) / 1e6, wrong));
        return body;
    }

    private static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
