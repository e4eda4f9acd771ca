/** A thread that never comes to an end, as a decoder does on a file made for it. */
for (;;);
