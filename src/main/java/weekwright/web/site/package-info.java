/** The public build log as it is served, without an account. */
package weekwright.web.site;
