/** How long records are kept, what holds them, their removal, and the export of everything about one person. */
package org.steadwork.retention;
