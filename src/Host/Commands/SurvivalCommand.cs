using System.CommandLine;
using Slantwise.Host.Studies;

namespace Slantwise.Host.Commands;

/// <summary><c>survival</c>: how long things lasted, from a plain table.</summary>
internal static class SurvivalCommand
{
    public static Command Of(GlobalOptions options)
    {
        var file = new Argument<string>("FILE") { Description = StudyWords.Say("ArgumentTimes") };
        var limit = new Option<double?>("--limit") { Description = StudyWords.Say("OptionLimit"), HelpName = "TIME" };
        var resolution = new Option<double?>("--resolution") { Description = StudyWords.Say("OptionResolution"), HelpName = "STEP" };
        var confidence = new ConfidenceOption();
        var command = new Command("survival", StudyWords.Say("SurvivalHelp")) { file, limit, resolution, confidence };
        command.SetAction(async (parsed, cancel) =>
        {
            foreach (var option in new[] { limit, resolution })
                if (parsed.GetValue(option) is { } value && !(value > 0 && double.IsFinite(value))) throw StudyRefusal.Of("OptionAboveZero", option.Name, value);
            var share = confidence.Of(parsed);
            var study = await HoldStudy.ReadAsync(parsed.GetRequiredValue(file), cancel);
            var answer = new SurvivalAnswer(study, share, parsed.GetValue(limit), parsed.GetValue(resolution));
            StudyAnswer.Say(parsed, options, study.Notes, answer.Lines, () => answer.Json);
            return 0;
        });
        return command;
    }
}
