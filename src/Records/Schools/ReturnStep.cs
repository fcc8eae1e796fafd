namespace Slantwise.Records.Schools;

/// <summary>One gate on the way back after a pause: a demand that stays ruled out for so many days.</summary>
/// <param name="Without">The demand that is ruled out.</param>
/// <param name="DayCount">From the first day on, 1 to 365: on day 1 + this many it may be lifted.</param>
public sealed record ReturnStep(BodyDemand Without, int DayCount);
