package org.steadwork.web;

import io.quarkus.arc.Arc;
import jakarta.annotation.Priority;
import jakarta.inject.Inject;
import jakarta.interceptor.AroundInvoke;
import jakarta.interceptor.Interceptor;
import jakarta.interceptor.InvocationContext;
import jakarta.transaction.Status;
import jakarta.transaction.SystemException;
import jakarta.transaction.TransactionManager;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** Serves {@link ReadOnce} from the answers of the page that is being read. */
@ReadOnce
@Interceptor
@Priority(Interceptor.Priority.APPLICATION)
class ReadOnceInterceptor {

    @Inject
    PageAnswers answers;

    @Inject
    TransactionManager transactions;

    @AroundInvoke
    Object ask(InvocationContext asked) throws Exception {
        if (!Arc.container().requestContext().isActive() || !answers.reading() || changing()) {
            return asked.proceed();
        }
        List<Object> key = List.of(asked.getMethod(), Arrays.asList(asked.getParameters()));
        Object known = answers.of(key);
        if (known == null) {
            Object answer = asked.proceed();
            known = answer instanceof List<?> list ? Collections.unmodifiableList(list) : answer;
            answers.keep(key, known);
        }
        return known;
    }

    /** What is read in a transaction belongs to its session, and may be read again after a change in it. */
    private boolean changing() throws SystemException {
        return transactions.getStatus() != Status.STATUS_NO_TRANSACTION;
    }
}
