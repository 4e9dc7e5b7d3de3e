/**
 * What several page groups share: the forecast as pages read it, lists to choose from, figures of a task and of a stage.
 * In come rows and forecasts, out go values that a template prints.
 */
package weekwright.web.parts;
