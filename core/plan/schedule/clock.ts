/**
 * A plan counts time in minutes from today's first. Every day has so many, whether worked or not, and who works on it
 * works its first ones, so that two people begin together. What it says is therefore right to the day, not to the hour.
 */
export const DAY = 1440

/** Days that are looked at: five years. Whatever is not done by then is not planned. */
export const HORIZON = 1826

/** Less than this is no time, minutes. */
export const NO_TIME = 1e-6
