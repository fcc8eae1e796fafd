using System.CommandLine;
using Slantwise.Host.Studies;

namespace Slantwise.Host.Commands;

/// <summary><c>agreement</c>: how far judges agree, from a plain table.</summary>
internal static class AgreementCommand
{
    public static Command Of(GlobalOptions options)
    {
        var file = new Argument<string>("FILE") { Description = StudyWords.Say("ArgumentJudgements") };
        var categories = new Option<string?>("--categories") { Description = StudyWords.Say("OptionCategories"), HelpName = "A,B,C" };
        var confidence = new ConfidenceOption();
        var command = new Command("agreement", StudyWords.Say("AgreementHelp")) { file, categories, confidence };
        command.SetAction(async (parsed, cancel) =>
        {
            var named = (parsed.GetValue(categories) ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            if (named.Length == 1 || named.Distinct().Count() < named.Length) throw StudyRefusal.Of("CategoriesUnclear", string.Join(", ", named));
            var study = await JudgementStudy.ReadAsync(parsed.GetRequiredValue(file), named, cancel);
            var answer = new AgreementAnswer(study, confidence.Of(parsed));
            StudyAnswer.Say(parsed, options, study.Notes, answer.Lines, () => answer.Json);
            return 0;
        });
        return command;
    }
}
