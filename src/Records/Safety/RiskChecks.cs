using System.Globalization;
using Slantwise.Records.Lessons;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Records.Safety;

/// <summary>What is proposed to be looked at before a lesson. Common practice, no source.</summary>
internal static class RiskChecks
{
    public static IEnumerable<string> Of(LessonRecord record, IReadOnlyList<TaskDesign> designs, IReadOnlyList<RiskTask> tasks, CultureInfo culture)
    {
        string Say(string key) => RiskWords.Text(key, culture);
        bool Has(params MovementPattern[] patterns) => designs.Any(d => patterns.Contains(d.Pattern));
        yield return Say("CheckFloor");
        if (record.Lesson.MatCount is > 0 and var mats) yield return RiskWords.TextCount("CheckMatsPlanned", culture, mats);
        else if (designs.Any(d => d.Mats.MatCount > 0)) yield return Say("CheckMats");
        if (Has(MovementPattern.RopeJumping)) yield return Say("CheckRopes");
        if (Has(MovementPattern.Throw, MovementPattern.Catch, MovementPattern.Strike, MovementPattern.Dribble)) yield return Say("CheckBalls");
        if (tasks.Any(t => t.Reasons.Contains(RiskReason.Height))) yield return Say("CheckHeight");
        yield return Say("CheckClothes");
        yield return Say("CheckStop");
        yield return Say("CheckFirstAid");
    }
}
