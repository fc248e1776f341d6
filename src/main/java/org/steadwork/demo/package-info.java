/** The invented demo clinic: loaded once, through the same classes that the pages use, into a database of its own. */
package org.steadwork.demo;
