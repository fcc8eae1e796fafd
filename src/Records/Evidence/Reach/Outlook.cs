using Slantwise.Engines.Statistics.Reach;
using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Evidence.Chances;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Evidence.Reach;

/// <summary>What is believed of a pupil at the levels of a sheet and at candidates, those that are not allowed left out.</summary>
internal sealed record Outlook(PupilOutlook Whole, int TrialCount, bool IsMostlyAssumed)
{
    public static Outlook Of(
        Pupil pupil, IReadOnlyList<Level> levels, SafetyPolicy policy, IEnumerable<Restriction> restrictions, DateOnly day, ClassChances chances, int lesson)
    {
        var allowed = Offer.LevelsFor(levels, policy, restrictions, day).Select(l => l.Id).ToHashSet();
        var found = chances.Chances(pupil.Id, levels, lesson);
        var seen = levels.Select((level, i) => allowed.Contains(level.Id) && found[i] is { } chance
            ? new LevelOutlook(chance.Logit.MeanLogits, chance.Logit.SdLogits)
            : (LevelOutlook?)null).ToArray();
        var ability = chances.AbilitySdLogits(pupil.Id, lesson);
        var isAssumed = found.OfType<SuccessChance>().All(c => c.Logit.Cautions.HasFlag(ResponseCaution.MostlyAssumption));
        return new Outlook(new PupilOutlook(ability, seen), chances.TrialCountOf(pupil.Id), isAssumed);
    }

    public PupilOutlook Of(int levelCount) => Whole with { Levels = [.. Whole.Levels.Take(levelCount)] };
}
