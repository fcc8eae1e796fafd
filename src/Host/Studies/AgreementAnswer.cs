using Slantwise.Engines.Statistics.Agreement;
using Slantwise.Host.Answers;

namespace Slantwise.Host.Studies;

/// <summary>What judgements show, as lines and as JSON.</summary>
/// <param name="study">The judgements.</param>
/// <param name="confidenceFraction">Of ranges.</param>
internal sealed class AgreementAnswer(JudgementStudy study, double confidenceFraction)
{
    private readonly Coefficients _coefficients = new(study, confidenceFraction);

    // More and less mean something where categories are in order, and of two it only has to be said which is the second.
    private ReportBalance? Balance => _coefficients.Table is { PairCount: > 0 } table && (study.IsOrdered || study.Categories.Count == 2) ? ReportBalance.Of(table) : null;

    // What is said of the whole: the nominal alpha and the table know it all.
    private AgreementCautions Cautions => _coefficients.All().Aggregate(AgreementCautions.None, (all, c) => all | c.Cautions);

    public object Json => new
    {
        unitCount = study.Units.Count,
        pairedUnitCount = study.Paired.Count(),
        ratingCount = study.Units.Sum(u => u.Given.Count),
        raters = study.Raters.Select((r, i) => new { rater = r, ratingCount = study.Units.Count(u => u.Given.ContainsKey(i)) }),
        categories = study.Categories,
        isOrdered = study.IsOrdered,
        confidenceFraction,
        coefficients = _coefficients.All().Select(c => c.Json),
        overPupils = study.HasPupils && study.Raters.Count == 2
            ? new { pupilCount = study.Paired.Select(u => u.Pupil).Distinct().Count(), coefficients = _coefficients.OverPupils().Select(c => c.Json) }
            : null,
        table = _coefficients.Table is { } table
            ? study.Categories.Select((c, i) => new { first = c, second = study.Categories.Select((d, j) => new { category = d, count = table[i, j] }) })
            : null,
        balance = Balance,
        cautions = CautionLines.Names(Cautions),
        notes = FindingLines.ToJson(study.Notes),
    };

    public IEnumerable<string> Lines()
    {
        var paired = study.Paired.Count();
        yield return StudyWords.Say("AgreementOf", study.Raters.Count, study.Units.Count, string.Join(", ", study.Raters));
        if (paired < study.Units.Count) yield return StudyWords.Say("AgreementPaired", paired);
        foreach (var caution in CautionLines.Sentences(Cautions)) yield return "! " + caution;
        if (_coefficients.Table is { PairCount: > 0 } table)
        {
            yield return "";
            yield return StudyWords.Say("AgreementTable", study.Raters[0], study.Raters[1]);
            foreach (var line in Crossed(table).Lines) yield return line;
            if (Balance is { } balance)
                yield return study.Categories.Count == 2
                    ? StudyWords.Say("AgreementBalanceTwo", study.Raters[0], study.Raters[1], study.Categories[1], balance.OverCount, balance.UnderCount, balance.PairCount, Numbers.Chance(balance.ChanceFraction))
                    : StudyWords.Say("AgreementBalance", study.Raters[0], balance.OverCount, balance.UnderCount, balance.PairCount, Numbers.Chance(balance.ChanceFraction));
        }
        // Of a handful of things any coefficient is chance; a program that asks for JSON is told them, and how few they are.
        if (Cautions.HasFlag(AgreementCautions.FewPairs))
        {
            yield return StudyWords.Say("AgreementCountsOnly");
            yield break;
        }
        yield return "";
        foreach (var line in Listed(_coefficients.All(), StudyWords.Say("HeadThings")).Lines) yield return line;
        if (_coefficients.OverPupils().ToList() is { Count: > 0 } over)
        {
            yield return "";
            yield return StudyWords.Say("AgreementOverPupils");
            foreach (var line in Listed(over, StudyWords.Say("HeadPupils")).Lines) yield return line;
        }
        yield return StudyWords.Say("AgreementLegend", confidenceFraction * 100);
    }

    private TextColumns Crossed(AgreementTable table)
    {
        var crossed = new TextColumns(1, ["", .. study.Categories, StudyWords.Say("HeadAll")]);
        for (var i = 0; i < study.Categories.Count; i++)
            crossed.Add([study.Categories[i], .. study.Categories.Select((_, j) => Numbers.Of(table[i, j])), Numbers.Of(table.FirstCount(i))]);
        crossed.Add([StudyWords.Say("HeadAll"), .. study.Categories.Select((_, j) => Numbers.Of(table.SecondCount(j))), Numbers.Of(table.PairCount)]);
        return crossed;
    }

    private static TextColumns Listed(IEnumerable<Coefficient> coefficients, string countHead)
    {
        var listed = new TextColumns(1, StudyWords.Say("HeadFigure"), countHead, StudyWords.Say("HeadValue"), "±", StudyWords.Say("HeadRange"), "");
        foreach (var c in coefficients)
            listed.Add(c.Words, Numbers.Of(c.Count), Numbers.Of(c.ValueFraction), Numbers.Of(c.ErrorFraction), Numbers.Range(c.LowFraction, c.HighFraction), c.WhyNot);
        return listed;
    }
}
