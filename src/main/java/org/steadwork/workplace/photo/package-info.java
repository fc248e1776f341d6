/** Takes in photographs: checks what the bytes really are, turns them upright, scales them and leaves everything but the picture behind. */
package org.steadwork.workplace.photo;
