using System.CommandLine;
using Slantwise.Host.Studies;

namespace Slantwise.Host.Commands;

/// <summary><c>calibration</c>: what predictions were worth, from a plain table.</summary>
internal static class CalibrationCommand
{
    public static Command Of(GlobalOptions options)
    {
        var file = new Argument<string>("FILE") { Description = StudyWords.Say("ArgumentForecasts") };
        var ranges = new Option<int?>("--ranges") { Description = StudyWords.Say("OptionRanges"), HelpName = "N" };
        var confidence = new ConfidenceOption();
        var command = new Command("calibration", StudyWords.Say("CalibrationHelp")) { file, ranges, confidence };
        command.SetAction(async (parsed, cancel) =>
        {
            if (parsed.GetValue(ranges) is < 1 or > 100) throw StudyRefusal.Of("OptionRange", ranges.Name, parsed.GetValue(ranges), 1, 100);
            var share = confidence.Of(parsed);
            var study = await ForecastStudy.ReadAsync(parsed.GetRequiredValue(file), cancel);
            var answer = new CalibrationAnswer(study, share, parsed.GetValue(ranges));
            StudyAnswer.Say(parsed, options, study.Notes, answer.Lines, () => answer.Json);
            return 0;
        });
        return command;
    }
}
