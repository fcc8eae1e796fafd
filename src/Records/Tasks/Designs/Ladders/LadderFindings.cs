using System.Globalization;
using Slantwise.Engines.Statistics.Reach;
using Slantwise.Records.Checks;
using Slantwise.Records.Evidence.Reach;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Words;

namespace Slantwise.Records.Tasks.Designs.Ladders;

/// <summary>What a teacher may want to look at before levels are taken: facts of the grid, the policy and the class, put as questions.</summary>
public static class LadderFindings
{
    // More than this at once, and a pupil does not know what changed. Our own choice, as in docs/tasks.md.
    private const int MovedCountMost = 2;

    /// <summary>Looks at levels by themselves.</summary>
    /// <param name="design">The task with the levels to look at, in their order.</param>
    /// <param name="chosen">The factors that were chosen to move, by key; none to leave that open.</param>
    /// <param name="unknown">Levels of which it is not known what they ask, by id.</param>
    /// <param name="policy">The school's policy.</param>
    /// <param name="words">The task's words in the reader's language.</param>
    /// <returns>First what refuses, then the easiest level, what the levels ask, and step by step. Empty where there is nothing to say.</returns>
    public static IReadOnlyList<Finding> Of(
        TaskDesign design, IReadOnlyCollection<string>? chosen, IReadOnlyCollection<Guid> unknown, SafetyPolicy policy, TaskWords words)
    {
        var findings = new List<Finding>();
        if (design.Levels.Count == 0) return findings;
        var culture = CultureInfo.GetCultureInfo(words.Language);
        AddAlike(findings, design);
        var open = Numbers(design, l => unknown.Contains(l.Id));
        if (open.Length > 0) findings.Add(Finding.Refused("LadderDemandsOpen", open));
        AddEasiest(findings, design, policy, words, culture);
        AddDemands(findings, design, policy);
        var off = Numbers(design, l => !design.IsOnGrid(l));
        if (off.Length > 0) findings.Add(Finding.Flagged("LadderOffGrid", off));
        var doses = design.Levels.Select(l => l.Dose.Kind).Distinct().ToList();
        if (doses.Count > 1) findings.Add(Finding.Flagged("LadderDoseKinds", string.Join(", ", doses.Select(d => TaskTerms.Of(d, culture)))));
        for (var i = 1; i < design.Levels.Count; i++) AddStep(findings, design, i, chosen, words, culture);
        return findings;
    }

    /// <summary>Looks at what the grid could give of what was asked for.</summary>
    /// <param name="proposal">The levels proposed.</param>
    /// <returns>One finding where there are fewer than asked for; else none.</returns>
    public static IReadOnlyList<Finding> Of(LadderProposal proposal) =>
        proposal.IsShort ? [Finding.Flagged("LadderShort", proposal.Levels.Count, proposal.Plan.LevelCount)] : [];

    /// <summary>Whom levels may leave out in a class, as numbers with their range; nobody is named.</summary>
    /// <param name="reach">The reach of the levels in the class.</param>
    /// <param name="band">The band it was found for.</param>
    /// <param name="className">What the class is called.</param>
    /// <returns>Empty where everybody probably has a level, and where no try stands behind it: then only what is not allowed is known.</returns>
    public static IReadOnlyList<Finding> Of(TaskReach reach, ReachBand band, string className)
    {
        var findings = new List<Finding>();
        var standings = reach.Pupils.Select(p => p.StandingIn(band)).ToList();
        if (standings.Count(s => s == ReachStanding.NothingAllowed) is var none and > 0)
            findings.Add(Finding.Flagged("LadderReachNone", className, none, reach.Pupils.Count));
        if (reach.TrialCount > 0 && standings.Count(s => s == ReachStanding.AllTooHard) is var hard and > 0)
            findings.Add(Finding.Flagged("LadderReachLeft", className, reach.Pupils.Count, reach.Whole.LeastCount, reach.Whole.MostCount, hard));
        return findings;
    }

    private static void AddAlike(List<Finding> findings, TaskDesign design)
    {
        for (var i = 1; i < design.Levels.Count; i++)
        {
            for (var before = 0; before < i; before++)
            {
                var (one, other) = (design.Levels[before], design.Levels[i]);
                if (one.Id == other.Id || (design.IsOnGrid(one) && design.IsOnGrid(other) && design.Moved(one, other).Count == 0)) findings.Add(Finding.Refused("LadderAlike", before + 1, i + 1));
            }
        }
    }

    private static void AddEasiest(List<Finding> findings, TaskDesign design, SafetyPolicy policy, TaskWords words, CultureInfo culture)
    {
        var easiest = design.Levels[0];
        var left = design.Levels.ToList().FindIndex(l => IsLeft(l, policy));
        if (left < 0) findings.Add(Finding.Flagged("LadderNoneLeft"));
        else if (left > 0) findings.Add(Finding.Flagged("LadderEasiestRemoved", Listed(easiest.Needs, culture), left + 1));
        else if (easiest.Needs.Count > 0) findings.Add(Finding.Flagged("LadderEasiestAsks", Listed(easiest.Needs, culture)));
        if (design.Factors.FirstOrDefault(f => f.Role == FactorRole.Key) is not { Range.Count: > 0 } key || LadderOrder.PlaceOf(key, easiest) is not > 0) return;
        findings.Add(Finding.Flagged(
            "LadderEasiestHigh", TaskTerms.Of(key, words, culture), LadderWords.Of(key, easiest.ValueOf(key)!.Value, words, culture), LadderWords.Of(key, key.Range[0], words, culture)));
    }

    private static void AddDemands(List<Finding> findings, TaskDesign design, SafetyPolicy policy)
    {
        foreach (var (demand, key) in new[] { (BodyDemand.HeadWeight, "LadderHeadEnters"), (BodyDemand.Inversion, "LadderInversionEnters") })
        {
            var first = design.Levels.ToList().FindIndex(l => l.Needs.Contains(demand));
            if (first >= 0) findings.Add(Finding.Flagged(key, first + 1));
        }
        for (var i = 0; i < design.Levels.Count; i++)
        {
            var level = design.Levels[i];
            if (level.Needs.Contains(BodyDemand.HeadWeight) && level.Dose.Kind == DoseKind.HoldS && level.Dose.Amount > policy.HeadHoldCapS)
                findings.Add(Finding.Flagged("LadderHoldCap", i + 1, level.Dose.Amount, policy.HeadHoldCapS));
        }
    }

    private static void AddStep(List<Finding> findings, TaskDesign design, int i, IReadOnlyCollection<string>? chosen, TaskWords words, CultureInfo culture)
    {
        var (from, to) = (design.Levels[i - 1], design.Levels[i]);
        if (design.IsOnGrid(from) && design.IsOnGrid(to))
        {
            var moves = LadderOrder.StepsOf(design, from, to);
            string Names(IEnumerable<LadderMove> some) =>
                string.Join(", ", some.Select(m => TaskTerms.Of(design.Factors.First(f => f.Key == m.FactorKey), words, culture)));
            var other = moves.Where(m => chosen?.Contains(m.FactorKey) == false).ToList();
            if (other.Count > 0) findings.Add(Finding.Flagged("LadderOtherFactor", i, i + 1, Names(other)));
            if (moves.Count > MovedCountMost) findings.Add(Finding.Flagged("LadderLeaps", i, i + 1, Names(moves)));
            if (moves.Any(m => m.By > 0) && moves.Any(m => m.By < 0)) findings.Add(Finding.Flagged("LadderBothWays", i, i + 1, Names(moves.Where(m => m.By > 0)), Names(moves.Where(m => m.By < 0))));
        }
        var (before, now) = (LadderSupports.Of(from.Posture), LadderSupports.Of(to.Posture));
        if (before.Count > 0 && now.Count > 0 && !before.Intersect(now).Any()) findings.Add(Finding.Flagged("LadderSupports", i, i + 1, Parts(before, culture), Parts(now, culture)));
    }

    // With no pupil's restrictions the day decides nothing.
    private static bool IsLeft(DesignedLevel level, SafetyPolicy policy) => Offer.LevelsFor([level.Named("")], policy, [], default).Count == 1;

    private static string Numbers(TaskDesign design, Func<DesignedLevel, bool> some) =>
        string.Join(", ", design.Levels.Select((l, i) => (l, i)).Where(l => some(l.l)).Select(l => l.i + 1));

    private static string Listed(IEnumerable<BodyDemand> demands, CultureInfo culture) => string.Join(", ", demands.Select(d => LadderWords.Of(d, culture)));

    private static string Parts(IEnumerable<SupportPart> parts, CultureInfo culture) => string.Join(", ", parts.Select(p => TaskTerms.Of(p, culture)));
}
