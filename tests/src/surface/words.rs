//! What things are called, in the languages of the tables (everyday headings, from memory; common practice, no source).

/// A language of headings.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Language {
    /// English.
    English,
    /// German.
    German,
    /// French.
    French,
    /// Spanish.
    Spanish,
    /// Chinese, simplified.
    Chinese,
    /// Chinese, traditional.
    Taiwanese,
    /// Japanese.
    Japanese,
}

/// The headings of a table.
#[derive(Clone, Copy, Debug)]
pub struct Headings {
    /// Sample id.
    pub id: &'static str,
    /// Part.
    pub part: &'static str,
    /// Lot.
    pub lot: &'static str,
    /// Supplier.
    pub supplier: &'static str,
    /// Spot.
    pub spot: &'static str,
    /// Date.
    pub date: &'static str,
    /// Time of day.
    pub time: &'static str,
    /// Measuring time.
    pub seconds: &'static str,
    /// Remark.
    pub note: &'static str,
    /// Element.
    pub element: &'static str,
    /// Value.
    pub value: &'static str,
    /// Unit of measure.
    pub unit: &'static str,
    /// Printed uncertainty.
    pub error: &'static str,
    /// Detection limit.
    pub limit: &'static str,
    /// Spectrum.
    pub spectrum: &'static str,
    /// Relative.
    pub relative: &'static str,
    /// "Not detected".
    pub missing: &'static str,
}

/// The headings in a language.
pub const fn headings(language: Language) -> Headings {
    match language {
        Language::English => Headings {
            id: "Sample",
            part: "Part",
            lot: "Lot",
            supplier: "Supplier",
            spot: "Spot",
            date: "Date",
            time: "Time",
            seconds: "Seconds",
            note: "Note",
            element: "Element",
            value: "Value",
            unit: "Unit",
            error: "u",
            limit: "LOD",
            spectrum: "Spectrum",
            relative: "rel",
            missing: "not detected",
        },
        Language::German => Headings {
            id: "Probe",
            part: "Teil",
            lot: "Charge",
            supplier: "Lieferant",
            spot: "Messpunkt",
            date: "Datum",
            time: "Uhrzeit",
            seconds: "Messzeit",
            note: "Bemerkung",
            element: "Element",
            value: "Wert",
            unit: "Einheit",
            error: "Unsicherheit",
            limit: "Nachweisgrenze",
            spectrum: "Spektrum",
            relative: "relativ",
            missing: "n.n.",
        },
        Language::French => Headings {
            id: "Échantillon",
            part: "Référence pièce",
            lot: "Lot",
            supplier: "Fournisseur",
            spot: "Point",
            date: "Date",
            time: "Heure",
            seconds: "Durée",
            note: "Remarque",
            element: "Élément",
            value: "Valeur",
            unit: "Unité",
            error: "Incertitude",
            limit: "LD",
            spectrum: "Spectre",
            relative: "relative",
            missing: "non détecté",
        },
        Language::Spanish => Headings {
            id: "Muestra",
            part: "Pieza",
            lot: "Lote",
            supplier: "Proveedor",
            spot: "Punto",
            date: "Fecha",
            time: "Hora",
            seconds: "Segundos",
            note: "Observaciones",
            element: "Elemento",
            value: "Valor",
            unit: "Unidad",
            error: "Incertidumbre",
            limit: "LD",
            spectrum: "Espectro",
            relative: "relativa",
            missing: "no detectado",
        },
        Language::Chinese => Headings {
            id: "样品编号",
            part: "零件号",
            lot: "批号",
            supplier: "供应商",
            spot: "测点",
            date: "日期",
            time: "时间",
            seconds: "测量时间",
            note: "备注",
            element: "元素",
            value: "结果",
            unit: "单位",
            error: "不确定度",
            limit: "检出限",
            spectrum: "光谱",
            relative: "相对",
            missing: "未检出",
        },
        Language::Taiwanese => Headings {
            id: "樣品編號",
            part: "料號",
            lot: "批號",
            supplier: "供應商",
            spot: "測點",
            date: "日期",
            time: "時間",
            seconds: "測量時間",
            note: "備註",
            element: "元素",
            value: "結果",
            unit: "單位",
            error: "不確定度",
            limit: "偵測極限",
            spectrum: "光譜",
            relative: "相對",
            missing: "未檢出",
        },
        Language::Japanese => Headings {
            id: "試料名",
            part: "部品番号",
            lot: "ロット",
            supplier: "メーカー",
            spot: "測定点",
            date: "測定日",
            time: "時刻",
            seconds: "測定時間",
            note: "備考",
            element: "元素",
            value: "測定値",
            unit: "単位",
            error: "不確かさ",
            limit: "検出限界",
            spectrum: "スペクトル",
            relative: "相対",
            missing: "不検出",
        },
    }
}

/// Names of Cd, Pb, Hg, Cr, Br, Cl.
pub const fn elements(language: Language) -> [&'static str; 6] {
    match language {
        Language::English => ["Cadmium", "Lead", "Mercury", "Chromium", "Bromine", "Chlorine"],
        Language::German => ["Cadmium", "Blei", "Quecksilber", "Chrom", "Brom", "Chlor"],
        Language::French => ["Cadmium", "Plomb", "Mercure", "Chrome", "Brome", "Chlore"],
        Language::Spanish => ["Cadmio", "Plomo", "Mercurio", "Cromo", "Bromo", "Cloro"],
        Language::Chinese => ["镉", "铅", "汞", "铬", "溴", "氯"],
        Language::Taiwanese => ["鎘", "鉛", "汞", "鉻", "溴", "氯"],
        Language::Japanese => ["カドミウム", "鉛", "水銀", "クロム", "臭素", "塩素"],
    }
}

/// A supplier's name and a remark, so that a table holds more than ASCII wherever its encoding can.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Script {
    /// The invented supplier.
    pub supplier: &'static str,
    /// A remark on a reading.
    pub note: &'static str,
}

/// Letters of Western Europe.
pub const WESTERN: Script = Script { supplier: "Érable & Söhne", note: "geprüft, größere Fläche" };
/// Simplified Chinese.
pub const CHINESE: Script = Script { supplier: "赤杨工厂", note: "表面清洁，第二次测量" };
/// Traditional Chinese.
pub const TAIWANESE: Script = Script { supplier: "赤楊工廠", note: "表面清潔，第二次測量" };
/// Japanese.
pub const JAPANESE: Script =
    Script { supplier: "ハンノキ製作所", note: "表面を拭いて再測定" };
/// Korean.
pub const KOREAN: Script = Script { supplier: "오리나무 공장", note: "표면을 닦고 다시 측정" };
