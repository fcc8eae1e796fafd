using Slantwise.Records.Postures;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Checks;

internal static class LevelCheck
{
    public static void Add(List<Finding> findings, string taskName, IReadOnlyList<Level> levels)
    {
        for (var i = 0; i < levels.Count; i++)
        {
            var level = levels[i];
            NameCheck.Add(findings, level.Name, Limits.NameLength, "LevelNameEmpty", "LevelNameTooLong", taskName, i + 1);
            AddDose(findings, taskName, i + 1, level.Dose);
            if (level.Demands.Any(d => !Enum.IsDefined(d))) findings.Add(Finding.Refused("LevelDemandUnknown", taskName, i + 1));
            if (level.Posture is { } key && PostureLibrary.Find(key) is null) findings.Add(Finding.Refused("LevelPostureUnknown", taskName, i + 1, key));
            for (var before = 0; before < i; before++)
            {
                if (levels[before].Id == level.Id) findings.Add(Finding.Refused("LevelTwice", taskName, before + 1, i + 1));
                else if (Alike.Levels(levels[before], level)) findings.Add(Finding.Refused("LevelsAlike", taskName, before + 1, i + 1));
            }
        }
    }

    private static void AddDose(List<Finding> findings, string taskName, int levelNumber, Dose dose)
    {
        (string Key, int Most)? limit = dose.Kind switch
        {
            DoseKind.HoldS => ("DoseHoldS", Limits.HoldS),
            DoseKind.RepetitionsCount => ("DoseRepetitionsCount", Limits.RepetitionsCount),
            DoseKind.DistanceM => ("DoseDistanceM", Limits.DistanceM),
            DoseKind.HeightM => ("DoseHeightM", Limits.HeightM),
            DoseKind.TargetSizeM => ("DoseTargetSizeM", Limits.TargetSizeM),
            _ => null,
        };
        if (limit is not { } known) findings.Add(Finding.Refused("DoseKindUnknown", taskName, levelNumber));
        else if (dose.Amount <= 0 || dose.Amount > known.Most) findings.Add(Finding.Refused(known.Key, taskName, levelNumber, dose.Amount, known.Most));
        else if (dose.Kind == DoseKind.RepetitionsCount && dose.Amount != decimal.Truncate(dose.Amount))
        {
            findings.Add(Finding.Refused("DoseRepetitionsNotWhole", taskName, levelNumber, dose.Amount));
        }
    }
}
