/**
 * The Bench: every calculator of the clinic without a patient, as a page and as JSON; nothing is stored.
 *
 * <p>This package knows no feature. A feature adds a calculator by a bean of type {@link org.steadwork.bench.Calculator}; page, API,
 * OpenAPI document, range checks and the tests over all calculators follow from its inputs.
 */
package org.steadwork.bench;
