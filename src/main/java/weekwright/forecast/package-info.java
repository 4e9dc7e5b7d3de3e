/**
 * Between the store and the engine: {@link weekwright.forecast.InputsBuilder} reads one state of a project as of a day,
 * {@link weekwright.forecast.ForecastRun} lets the engine work, {@link weekwright.forecast.Forecast} is what came out in
 * dates, money and chances, {@link weekwright.forecast.Forecasts} runs and keeps forecasts for a server, and
 * {@link weekwright.forecast.WeekPlan} is the week's sheet. In comes a read transaction, or plain files that were checked, and a day; no wall clock is read.
 */
package weekwright.forecast;
