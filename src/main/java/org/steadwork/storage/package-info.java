/** The database as a thing on a disk or a server: opening it, its key, its schema's version, and clear words when it cannot be had. */
package org.steadwork.storage;
