package org.steadwork.web;

import jakarta.interceptor.InterceptorBinding;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A query that several parts of one page ask with the same arguments: while a page is being read (GET, outside a transaction) the first answer serves
 * the others. Whatever may change something asks anew each time. Lists come back unmodifiable.
 */
@InterceptorBinding
@Target({ ElementType.METHOD, ElementType.TYPE })
@Retention(RetentionPolicy.RUNTIME)
public @interface ReadOnce {
}
