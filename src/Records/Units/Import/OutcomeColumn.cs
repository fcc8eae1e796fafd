namespace Slantwise.Records.Units.Import;

/// <summary>A column of a table of outcomes.</summary>
internal enum OutcomeColumn
{
    Code = 1,
    Text = 2,
    Framework = 3,
    Licence = 4,
    Id = 5,
    Years = 6,
}
