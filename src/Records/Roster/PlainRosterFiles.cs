using Slantwise.Records.Checks;
using Slantwise.Records.Csv;

namespace Slantwise.Records.Roster;

/// <summary>Reads rosters that are plain tables: one row a pupil and class.</summary>
internal static class PlainRosterFiles
{
    private static readonly Dictionary<string, PlainColumn> Aliases = new()
    {
        ["class"] = PlainColumn.Class, ["classname"] = PlainColumn.Class, ["group"] = PlainColumn.Class, ["form"] = PlainColumn.Class,
        ["clase"] = PlainColumn.Class, ["grupo"] = PlainColumn.Class, ["curso"] = PlainColumn.Class,
        ["code"] = PlainColumn.Code, ["pupilcode"] = PlainColumn.Code, ["studentcode"] = PlainColumn.Code,
        ["codigo"] = PlainColumn.Code, ["codigoalumno"] = PlainColumn.Code, ["codigodelalumno"] = PlainColumn.Code,
        ["name"] = PlainColumn.Name, ["displayname"] = PlainColumn.Name, ["pupil"] = PlainColumn.Name, ["pupilname"] = PlainColumn.Name,
        ["student"] = PlainColumn.Name, ["studentname"] = PlainColumn.Name, ["knownas"] = PlainColumn.Name,
        ["alumno"] = PlainColumn.Name, ["alumna"] = PlainColumn.Name, ["nombrevisible"] = PlainColumn.Name, ["nombreparamostrar"] = PlainColumn.Name,
        ["firstname"] = PlainColumn.GivenName, ["givenname"] = PlainColumn.GivenName, ["forename"] = PlainColumn.GivenName,
        ["first"] = PlainColumn.GivenName, ["nombredepila"] = PlainColumn.GivenName,
        ["lastname"] = PlainColumn.FamilyName, ["familyname"] = PlainColumn.FamilyName, ["surname"] = PlainColumn.FamilyName,
        ["last"] = PlainColumn.FamilyName, ["apellido"] = PlainColumn.FamilyName, ["apellidos"] = PlainColumn.FamilyName, ["primerapellido"] = PlainColumn.FamilyName,
        ["id"] = PlainColumn.Key, ["rosterid"] = PlainColumn.Key, ["rosterkey"] = PlainColumn.Key, ["sourcedid"] = PlainColumn.Key,
        ["pupilid"] = PlainColumn.Key, ["studentid"] = PlainColumn.Key, ["identificador"] = PlainColumn.Key, ["idalumno"] = PlainColumn.Key,
        ["nombre"] = PlainColumn.NameOrGivenName,
    };

    public static RosterReading Read(IReadOnlyList<CsvTable> tables, List<Finding> findings)
    {
        var rows = new List<RosterDraft>();
        foreach (var table in tables)
        {
            findings.AddRange(table.Findings);
            if (table.Headings.Count > 0) ReadTable(table, rows, findings);
        }
        return RosterDrafts.Finish(rows, [], isOneRoster: false, findings);
    }

    private static void ReadTable(CsvTable table, List<RosterDraft> rows, List<Finding> findings)
    {
        var columns = CsvColumns<PlainColumn>.Of(table, Aliases, findings);
        foreach (var unknown in columns.Unknown.Where(h => h.Length > 0)) findings.Add(Finding.Flagged("ColumnNotUsed", table.Place, TextCheck.Visible(unknown)));
        if (!columns.Has(PlainColumn.Class))
        {
            findings.Add(Finding.Refused("ColumnMissing", table.Place, "class"));
            return;
        }
        var hasFamily = columns.Has(PlainColumn.FamilyName);
        var name = columns[PlainColumn.Name] ?? (hasFamily ? null : columns[PlainColumn.NameOrGivenName]);
        var given = columns[PlainColumn.GivenName] ?? (hasFamily ? columns[PlainColumn.NameOrGivenName] : null);
        if (name is null && given is null && !columns.Has(PlainColumn.Code) && !columns.Has(PlainColumn.Key))
        {
            findings.Add(Finding.Refused("ColumnMissing", table.Place, "name / code / id"));
            return;
        }
        if (table.Rows.Count == 0) findings.Add(Finding.Flagged("TableHasNoRow", table.Place));
        foreach (var row in table.Rows)
        {
            var reader = new RosterFieldReader(row, findings);
            var draft = new RosterDraft
            {
                Place = row.Place,
                ClassName = reader.Required(columns[PlainColumn.Class], Limits.ClassNameLength),
                Code = reader.Code(columns[PlainColumn.Code]),
                PupilKey = reader.Optional(columns[PlainColumn.Key], Limits.RosterKeyLength),
                Name = reader.Optional(name, Limits.DisplayNameLength),
                GivenName = reader.Optional(given, Limits.DisplayNameLength),
                FamilyName = reader.Optional(columns[PlainColumn.FamilyName], Limits.DisplayNameLength),
            };
            if (!reader.HasRefused && draft is { Code: null, PupilKey: null, Name: null, GivenName: null })
            {
                reader.Refuse("RowNamesNobody", row.Place);
            }
            if (!reader.HasRefused) rows.Add(draft);
        }
    }
}
