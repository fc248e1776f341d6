/** The tables of the database as they are, read from the database itself: for what must reach every one of them. Plain JDBC, no entity. */
package org.steadwork.tables;
