package org.steadwork;

import org.junit.platform.suite.api.ExcludeTags;
import org.junit.platform.suite.api.IncludeClassNamePatterns;
import org.junit.platform.suite.api.IncludeTags;
import org.junit.platform.suite.api.SelectPackages;
import org.junit.platform.suite.api.Suite;

/** What starts a clinic of its own, with settings or a database of its own: the second half of the usual run, beside
 * {@link SharedClinicSuite}. */
@Suite
@SelectPackages("org.steadwork")
@IncludeClassNamePatterns(".*Test")
@IncludeTags("own-clinic")
@ExcludeTags("long")
class OwnClinicSuite {
}
