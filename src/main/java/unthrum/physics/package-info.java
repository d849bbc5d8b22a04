/** What a panel, and what is stuck on it, does to vibration, sound, heat and moisture: pure functions in SI units. */
package unthrum.physics;
