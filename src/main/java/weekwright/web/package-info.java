/**
 * The pages. {@link weekwright.web.Server} serves them, {@link weekwright.web.Routes} is the one list of addresses; each
 * page group has its package, named as its folder of templates.
 */
package weekwright.web;
