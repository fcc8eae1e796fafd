using Slantwise.Records.Checks;
using Slantwise.Records.Csv;

namespace Slantwise.Records.Units.Import;

/// <summary>Reads outcomes from a table with headings: code, text, framework, and a licence where there is one.</summary>
internal static class OutcomeTable
{
    private static readonly Dictionary<string, OutcomeColumn> Aliases = new()
    {
        ["code"] = OutcomeColumn.Code, ["codigo"] = OutcomeColumn.Code, ["humancodingscheme"] = OutcomeColumn.Code, ["notation"] = OutcomeColumn.Code, ["clave"] = OutcomeColumn.Code,
        ["text"] = OutcomeColumn.Text, ["outcome"] = OutcomeColumn.Text, ["statement"] = OutcomeColumn.Text, ["fullstatement"] = OutcomeColumn.Text, ["description"] = OutcomeColumn.Text,
        ["texto"] = OutcomeColumn.Text, ["enunciado"] = OutcomeColumn.Text, ["descripcion"] = OutcomeColumn.Text, ["criterio"] = OutcomeColumn.Text, ["resultado"] = OutcomeColumn.Text,
        ["framework"] = OutcomeColumn.Framework, ["source"] = OutcomeColumn.Framework, ["document"] = OutcomeColumn.Framework,
        ["marco"] = OutcomeColumn.Framework, ["fuente"] = OutcomeColumn.Framework, ["curriculo"] = OutcomeColumn.Framework, ["documento"] = OutcomeColumn.Framework,
        ["licence"] = OutcomeColumn.Licence, ["license"] = OutcomeColumn.Licence, ["rights"] = OutcomeColumn.Licence, ["licencia"] = OutcomeColumn.Licence, ["derechos"] = OutcomeColumn.Licence,
        ["id"] = OutcomeColumn.Id, ["identifier"] = OutcomeColumn.Id, ["identificador"] = OutcomeColumn.Id,
        ["educationlevel"] = OutcomeColumn.Years, ["year"] = OutcomeColumn.Years, ["grade"] = OutcomeColumn.Years, ["curso"] = OutcomeColumn.Years, ["nivel"] = OutcomeColumn.Years,
    };

    public static OutcomeReading Read(string fileName, string text)
    {
        var table = CsvTable.Read(fileName, text);
        List<Finding> findings = [.. table.Findings];
        var columns = CsvColumns<OutcomeColumn>.Of(table, Aliases, findings);
        foreach (var unknown in columns.Unknown.Where(h => h.Length > 0)) findings.Add(Finding.Flagged("ColumnNotUsed", table.Place, TextCheck.Visible(unknown)));
        var candidates = new List<OutcomeCandidate>();
        if (table.Headings.Count > 0 && !columns.Has(OutcomeColumn.Code) && !columns.Has(OutcomeColumn.Text))
            findings.Add(Finding.Refused("ColumnMissing", table.Place, "code / text"));
        else if (table.Headings.Count > 0 && table.Rows.Count == 0) findings.Add(Finding.Flagged("TableHasNoRow", table.Place));
        else
        {
            if (table.Rows.Count > OutcomeFiles.MostCandidates) findings.Add(Finding.Flagged("OutcomeFileMany", table.Place, table.Rows.Count, OutcomeFiles.MostCandidates));
            foreach (var row in table.Rows.Take(OutcomeFiles.MostCandidates)) candidates.Add(Candidate(row, columns, candidates));
        }
        var licences = table.Rows.Select(r => OutcomeFiles.Line(r[columns[OutcomeColumn.Licence]])).ToList();
        var named = licences.Where(l => l.Length > 0).Distinct().ToList();
        // One row without a licence beside rows with one: the silence is not a permission.
        var standing = named.Count > 0 && named.Count != licences.Distinct().Count() ? LicenceStanding.Closed : OpenLicence.Of(named);
        var frameworks = candidates.Select(c => c.Framework).Where(f => f.Length > 0).Distinct().ToList();
        return new OutcomeReading
        {
            FileName = fileName,
            Framework = string.Join("; ", frameworks.Take(3)),
            Licence = string.Join("; ", named.Take(3)),
            Standing = standing == LicenceStanding.Unnamed && frameworks.Count == 0 && candidates.All(c => c.Code.Length == 0) ? LicenceStanding.Own : standing,
            Candidates = candidates,
            Findings = findings,
        };
    }

    private static OutcomeCandidate Candidate(CsvRow row, CsvColumns<OutcomeColumn> columns, List<OutcomeCandidate> before)
    {
        string Field(OutcomeColumn column) => OutcomeFiles.Line(row[columns[column]]);
        var (code, text, framework) = (Field(OutcomeColumn.Code), Field(OutcomeColumn.Text), Field(OutcomeColumn.Framework));
        var id = Guid.TryParse(Field(OutcomeColumn.Id), out var given) && given != Guid.Empty ? given
            : OutcomeFiles.IdOf("outcome", framework, code, code.Length > 0 && framework.Length > 0 ? "" : text);
        var candidate = OutcomeFiles.Candidate(row.Place, id, row.LineNumber, code, text, "", framework) with { Years = Field(OutcomeColumn.Years) };
        return before.Any(b => b.Id == id)
            ? candidate with { Id = OutcomeFiles.IdOf("twice", id.ToString(), $"{row.LineNumber}"), Findings = [.. candidate.Findings, Finding.Refused("OutcomeFileTwice", row.Place)] }
            : candidate;
    }
}
