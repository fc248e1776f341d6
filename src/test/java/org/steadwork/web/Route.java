package org.steadwork.web;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.properties.HasAnnotations;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PATCH;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import java.lang.annotation.Annotation;
import java.nio.file.Paths;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One route as the application's classes declare it.
 *
 * @param path  with parameters as {@code {name}}, their patterns left out
 * @param roles the role allowed, or {@code open}
 */
public record Route(String method, String path, String roles) {

    private static final List<Class<? extends Annotation>> METHODS = List.of(GET.class, POST.class, PUT.class, DELETE.class, PATCH.class);

    /** Reads all routes from the compiled classes, so that a new one is among them without being listed. */
    public static List<Route> all() {
        List<Route> routes = new ArrayList<>();
        for (JavaClass pages : new ClassFileImporter().importPath(Paths.get("target/classes"))) {
            if (pages.isAnnotatedWith(Path.class.getName())) {
                for (JavaMethod method : pages.getMethods()) {
                    METHODS.stream().filter(kind -> method.isAnnotatedWith(kind.getName()))
                            .forEach(kind -> routes.add(new Route(kind.getSimpleName(), path(pages, method), roles(pages, method))));
                }
            }
        }
        routes.sort(Comparator.comparing(Route::toString));
        return routes;
    }

    boolean get() {
        return method.equals("GET");
    }

    boolean open() {
        return roles.equals("open");
    }

    private static String path(JavaClass pages, JavaMethod method) {
        String own = method.isAnnotatedWith(Path.class.getName()) ? (String) value(method, Path.class) : "";
        String path = ("/" + value(pages, Path.class) + "/" + own).replaceAll("\\{(\\w+):[^}]*}", "{$1}").replaceAll("/+", "/");
        return path.length() > 1 && path.endsWith("/") ? path.substring(0, path.length() - 1) : path;
    }

    private static String roles(JavaClass pages, JavaMethod method) {
        for (HasAnnotations<?> place : new HasAnnotations<?>[]{method, pages}) {
            if (place.isAnnotatedWith(RolesAllowed.class.getName())) {
                return String.join(",", (String[]) value(place, RolesAllowed.class));
            }
            if (place.isAnnotatedWith(PermitAll.class.getName())) {
                return "open";
            }
        }
        throw new AssertionError(method.getFullName() + " says neither who may come in nor that it is open");
    }

    private static Object value(HasAnnotations<?> place, Class<? extends Annotation> type) {
        return place.getAnnotationOfType(type.getName()).get("value").orElseThrow();
    }

    @Override
    public String toString() {
        return method + " " + path;
    }
}
