/** Backups: one sealed file with every row of every table, made while the clinic runs, and its restoring into an empty database. */
package org.steadwork.backup;
