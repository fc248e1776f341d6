package org.steadwork;

import org.junit.platform.suite.api.IncludeClassNamePatterns;
import org.junit.platform.suite.api.IncludeTags;
import org.junit.platform.suite.api.SelectPackages;
import org.junit.platform.suite.api.Suite;

/** What the usual run leaves out for its length, and what it takes only a part of: {@code ./mvnw -Plong verify}. */
@Suite
@SelectPackages("org.steadwork")
@IncludeClassNamePatterns(".*Test")
@IncludeTags({ "long", "longer" })
class LongSuite {
}
