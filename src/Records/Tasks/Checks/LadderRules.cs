using Slantwise.Records.Checks;
using Slantwise.Records.Postures;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Tasks.Checks;

/// <summary>What the levels of a task keep to.</summary>
internal static class LadderRules
{
    public const int LevelCountLeast = 4;
    public const int LevelCountMost = 6;
    public const int MovedCountMost = 2;

    public static void Add(PartFindings said, TaskDesign design)
    {
        if (design.Levels.Count is < LevelCountLeast or > LevelCountMost)
        {
            said.Flag("DesignLevelCount", "levels", design.Levels.Count, LevelCountLeast, LevelCountMost);
        }
        for (var i = 0; i < design.Levels.Count; i++)
        {
            AddLevel(said, design, design.Levels[i], $"levels[{i}]");
            AddSteps(said, design, i);
        }
        // What any school may rule out leaves somebody without a way in, if it is asked at the start.
        if (design.Levels.Count > 0 && design.Levels[0].Needs is { Count: > 0 } asked)
        {
            said.Flag("DesignEasiest", "levels[0].demands", string.Join(", ", asked.Select(TaskFileWords.Of)));
        }
        if (design.Pattern == MovementPattern.StaticBalance && design.Levels.All(l => l.Posture is null)) said.Flag("DesignWithoutPosture", "levels");
    }

    private static void AddLevel(PartFindings said, TaskDesign design, DesignedLevel level, string place)
    {
        AddDose(said, design, level.Dose, place + ".dose");
        foreach (var (key, value) in level.Settings)
        {
            var factor = design.Factors.FirstOrDefault(f => f.Key == key && f.Dose is null);
            if (factor is null) said.Refuse("DesignSettingUnknown", $"{place}.at.{key}", string.Join(", ", design.Factors.Where(f => f.Dose is null).Select(f => f.Key)));
            else if (!factor.Range.Contains(value)) said.Refuse("DesignSettingOutside", $"{place}.at.{key}", value, string.Join(", ", factor.Range));
        }
        // A level that a teacher added by hand is a level all the same: it has no place on the grid yet.
        foreach (var factor in design.Factors.Where(f => f.Dose is null && level.ValueOf(f) is null))
        {
            said.Flag("DesignSettingMissing", place + ".at", factor.Key, string.Join(", ", factor.Range));
        }
        if (level.Posture is not { } posture) return;
        if (PostureLibrary.Find(posture) is null) said.Refuse("DesignPosture", place + ".posture", posture);
        var unsaid = level.Needs.Except(level.Demands).ToList();
        if (unsaid.Count > 0) said.Refuse("DesignDemandUnsaid", place + ".demands", posture, string.Join(", ", unsaid.Select(TaskFileWords.Of)));
    }

    private static void AddDose(PartFindings said, TaskDesign design, Dose dose, string place)
    {
        var most = dose.Kind switch
        {
            DoseKind.HoldS => Limits.HoldS,
            DoseKind.RepetitionsCount => Limits.RepetitionsCount,
            DoseKind.DistanceM => Limits.DistanceM,
            DoseKind.HeightM => Limits.HeightM,
            _ => Limits.TargetSizeM,
        };
        if (dose.Amount <= 0 || dose.Amount > most) said.Refuse("DesignDoseOutside", place, dose.Amount, most);
        if (dose.Kind == DoseKind.RepetitionsCount && dose.Amount != decimal.Truncate(dose.Amount)) said.Refuse("DesignDoseNotWhole", place, dose.Amount);
        var factor = design.Factors.FirstOrDefault(f => f.Dose == dose.Kind);
        if (factor is null) said.Refuse("DesignDoseNotInGrid", place, TaskFileWords.Of(dose.Kind), string.Join(", ", design.DoseKinds.Select(TaskFileWords.Of)));
        else if (!factor.Range.Contains(FactorValue.Of(dose.Amount))) said.Refuse("DesignSettingOutside", place, dose.Amount, string.Join(", ", factor.Range));
    }

    private static void AddSteps(PartFindings said, TaskDesign design, int i)
    {
        for (var before = 0; before < i; before++)
        {
            var moved = design.Moved(design.Levels[before], design.Levels[i]);
            if (moved.Count == 0) said.Refuse("DesignLevelsAlike", $"levels[{i}]", before + 1, i + 1);
            else if (before == i - 1 && moved.Count > MovedCountMost)
            {
                said.Flag("DesignLevelLeaps", $"levels[{i}]", before + 1, i + 1, string.Join(", ", moved.Select(f => f.Key)), MovedCountMost);
            }
        }
    }
}
