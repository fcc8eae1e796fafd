namespace Slantwise.Engines.Planning.Practice.Changes;

/// <summary>What may be changed in a plan, and how far.</summary>
/// <param name="MostMats">Mats there are, at least as many as planned.</param>
/// <param name="LeastTalkS">Talk that stays, 0 to what is planned.</param>
/// <param name="FewestSets">Sets that stay, 1 to what is planned.</param>
/// <param name="MostSideStations">Stations without mats there may be, at least as many as planned.</param>
/// <param name="MostTrialsATurn">Trials one pupil may take in a row, at least as many as planned.</param>
/// <param name="MayObserverRecord">Whether somebody who waits may write for the performer.</param>
public readonly record struct ChangeLimits(
    int MostMats, double LeastTalkS, int FewestSets, int MostSideStations, int MostTrialsATurn, bool MayObserverRecord);
