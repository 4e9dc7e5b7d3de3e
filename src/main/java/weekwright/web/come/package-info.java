/** A person's own days at a secret address. */
package weekwright.web.come;
