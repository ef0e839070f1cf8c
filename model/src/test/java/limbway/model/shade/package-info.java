/** Tests of shade: published and derived vectors, brute force and another geometry library as second ways. */
package limbway.model.shade;
