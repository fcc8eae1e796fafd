using System.CommandLine;
using Slantwise.Engines.Statistics.Responses;
using Slantwise.Host.Studies;

namespace Slantwise.Host.Commands;

/// <summary><c>fit</c>: the response model fitted to plain tables.</summary>
internal static class FitCommand
{
    public static Command Of(GlobalOptions options)
    {
        var trials = File("--trials", "OptionTrials", isRequired: true);
        var levels = File("--levels", "OptionLevels");
        var predictions = File("--predictions", "OptionPredictions");
        var covariates = new Option<string?>("--covariates") { Description = StudyWords.Say("OptionCovariates"), HelpName = "A,B" };
        var priors = new Option<string>("--priors") { Description = StudyWords.Say("OptionPriors"), DefaultValueFactory = _ => "standard" };
        priors.AcceptOnlyFromAmong("standard", "flat");
        var scales = new Option<string>("--scales") { Description = StudyWords.Say("OptionScales"), DefaultValueFactory = _ => "estimated" };
        scales.AcceptOnlyFromAmong("fixed", "estimated");
        var abilitySd = Number("--ability-sd", "OptionAbilitySd");
        var residualSd = Number("--residual-sd", "OptionResidualSd");
        var drift = Number("--drift", "OptionDrift");
        var isStill = new Option<bool>("--no-growth") { Description = StudyWords.Say("OptionNoGrowth") };
        var nodes = new Option<int?>("--nodes") { Description = StudyWords.Say("OptionNodes"), HelpName = "N" };
        var at = new Option<int?>("--at") { Description = StudyWords.Say("OptionAt"), HelpName = "LESSON" };
        var isConditional = new Option<bool>("--conditional") { Description = StudyWords.Say("OptionConditional") };
        var hasChances = new Option<bool>("--chances") { Description = StudyWords.Say("OptionChances") };
        var command = new Command("fit", StudyWords.Say("FitHelp"))
        {
            trials, levels, predictions, covariates, priors, scales, abilitySd, residualSd, drift, isStill, nodes, at, isConditional, hasChances,
        };
        command.SetAction(async (parsed, cancel) =>
        {
            var isFixed = parsed.GetValue(scales) == "fixed";
            var standard = ResponsePriors.Standard;
            var isFlat = parsed.GetValue(priors) == "flat";
            double? SdOf(Option<double?> option, double usual)
            {
                if (!isFixed && parsed.GetValue(option) is not null) throw StudyRefusal.Of("ScaleNotFixed", option.Name);
                return isFixed ? Within(parsed.GetValue(option), option.Name, 0.01, 10) ?? usual : null;
            }
            var how = new ResponseOptions
            {
                IsFlat = isFlat,
                AbilitySdLogits = SdOf(abilitySd, standard.Ability!.Value.MedianLogits),
                ResidualSdLogits = SdOf(residualSd, standard.Residual!.Value.MedianLogits),
                // Nothing is assumed, so nobody wanders either.
                DriftSdLogits = Within(parsed.GetValue(drift), drift.Name, 0, 4) ?? (isFlat ? 0 : new ResponseOptions().DriftSdLogits),
                // Whoever compares digits wants them all; a class's page does with fewer.
                ToleranceSd = isFlat ? 1e-11 : 1e-9,
                HasGrowth = !parsed.GetValue(isStill),
                NodeCount = (int)(Within(parsed.GetValue(nodes), nodes.Name, 3, 61) ?? (isFlat ? 31 : 7)),
            };
            var named = (parsed.GetValue(covariates) ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            if (isFlat && named.Length > 0) throw StudyRefusal.Of("CovariatesUnusedWhenFlat");

            var study = await TrialStudy.ReadAsync(parsed.GetRequiredValue(trials)!, parsed.GetValue(levels), parsed.GetValue(predictions), named, cancel);
            var work = new ResponseWork(Environment.ProcessorCount, Cancellation: cancel);
            var fit = ResponseModel.Fit(study.Data, how, work);
            var conditional = parsed.GetValue(isConditional) ? ConditionalModel.Fit(study.Data, how, work) : null;
            var lesson = parsed.GetValue(at) ?? study.FirstLesson + fit.LastLesson;
            if (lesson < study.FirstLesson) throw StudyRefusal.Of("LessonBeforeFirst", lesson, study.FirstLesson);
            var answer = new FitAnswer(study, how, fit, lesson, named, conditional, parsed.GetValue(hasChances));
            StudyAnswer.Say(parsed, options, study.Notes, answer.Lines, () => answer.Json);
            return 0;
        });
        return command;
    }

    private static Option<string?> File(string name, string key, bool isRequired = false) =>
        new(name) { Description = StudyWords.Say(key), HelpName = "FILE", Required = isRequired };

    private static Option<double?> Number(string name, string key) => new(name) { Description = StudyWords.Say(key), HelpName = "SD" };

    private static double? Within(double? given, string name, double least, double most) =>
        given is not { } value || (value >= least && value <= most) ? given : throw StudyRefusal.Of("OptionRange", name, value, least, most);
}
