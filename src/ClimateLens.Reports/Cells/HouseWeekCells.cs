namespace ClimateLens.Reports.Cells;

/// <summary>The parts of a house-week page, in the reader's order. A new part is a new cell in this list.</summary>
public static class HouseWeekCells
{
    /// <summary>The cells.</summary>
    public static IReadOnlyList<IReportCell> All { get; } =
    [
        new WeekInBriefCell(),
        new WhatToChangeCell(),
        new RiskCalendarCell(),
        new TonightCell(),
        new WeekAirCell(),
        new CausesCell(),
        new DewMarginCell(),
        new WetnessCell(),
        new InfectionCell(),
        new CertaintyCell(),
        new HourlyTableCell(),
        new WateringsCell(),
        new CanopyCell(),
        new PotsCell(),
        new OtherFindingsCell(),
        new ScoutingCell(),
        new RecordsCell(),
        new SensorsCell(),
        new SecondOpinionCell(),
        new NotKnownCell(),
        new MethodsCell(),
        new ProvenanceCell(),
    ];
}
