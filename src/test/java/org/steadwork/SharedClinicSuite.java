package org.steadwork;

import org.junit.platform.suite.api.ExcludeTags;
import org.junit.platform.suite.api.IncludeClassNamePatterns;
import org.junit.platform.suite.api.SelectPackages;
import org.junit.platform.suite.api.Suite;

/** What needs no clinic at all, or shares one with the others: the first half of the usual run, beside {@link OwnClinicSuite}. */
@Suite
@SelectPackages("org.steadwork")
@IncludeClassNamePatterns(".*Test")
@ExcludeTags({ "own-clinic", "long" })
class SharedClinicSuite {
}
