/** Pictures: what their first bytes tell, and copies that are upright, small and free of private tags. */
package weekwright.files.picture;
