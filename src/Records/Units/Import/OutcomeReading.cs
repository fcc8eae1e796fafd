using Slantwise.Records.Checks;

namespace Slantwise.Records.Units.Import;

/// <summary>A file of outcomes as it was read. Nothing is kept of it until somebody chose.</summary>
public sealed record OutcomeReading
{
    /// <summary>The file's name.</summary>
    public required string FileName { get; init; }

    /// <summary>What the framework is called; empty where the file does not say.</summary>
    public string Framework { get; init; } = "";

    /// <summary>Who made it; empty where the file does not say.</summary>
    public string Creator { get; init; } = "";

    /// <summary>What the file says about rights, in its own words; empty where it says nothing.</summary>
    public string Licence { get; init; } = "";

    /// <summary>What that means for copying sentences.</summary>
    public required LicenceStanding Standing { get; init; }

    /// <summary>What it offers, in the order of the framework.</summary>
    public IReadOnlyList<OutcomeCandidate> Candidates { get; init; } = [];

    /// <summary>What there is to say about the file as a whole.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>Whether only codes are kept unless the teacher says otherwise.</summary>
    public bool KeepsOnlyCodes => Standing is LicenceStanding.Closed or LicenceStanding.Unnamed;

    /// <summary>A unit's outcomes with those chosen from the file after them.</summary>
    /// <param name="outcomes">What the unit has.</param>
    /// <param name="chosen">The ids chosen; one that cannot be taken or is there already is passed over.</param>
    /// <param name="keepsOnlyCodes">Whether sentences are left in the file.</param>
    /// <returns>At most as many as a unit may hold, the first of the file first.</returns>
    public IReadOnlyList<Outcome> Take(IReadOnlyList<Outcome> outcomes, IReadOnlySet<Guid> chosen, bool keepsOnlyCodes)
    {
        var there = outcomes.Select(o => o.Id).ToHashSet();
        var taken = Candidates
            .Where(c => chosen.Contains(c.Id) && !there.Contains(c.Id) && c.CanBeTaken(keepsOnlyCodes))
            .Select(c => new Outcome(c.Id, c.Code, keepsOnlyCodes ? "" : c.Text, c.Framework));
        return [.. outcomes, .. taken.Take(Math.Max(0, UnitLimits.OutcomeCount - outcomes.Count))];
    }
}
