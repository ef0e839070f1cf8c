/** Enclosures for tests: drawn in a few lines, or random from a seed. */
package limbway.model.scene;
