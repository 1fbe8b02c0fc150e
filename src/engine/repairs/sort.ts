import { ArrayValueObject, type IFunctionService } from '@univerjs/engine-formula';
import { amend, asArray } from './amend.ts';

const copied = (array: ArrayValueObject): ArrayValueObject =>
  ArrayValueObject.create({
    calculateValueList: [...array.getArrayValue()],
    rowCount: array.getRowCount(),
    columnCount: array.getColumnCount(),
    unitId: array.getUnitId(),
    sheetId: array.getSheetId(),
    row: array.getCurrentRow(),
    column: array.getCurrentColumn(),
  });

/**
 * SORT as shipped sorts the array it is given, which it shares with every other formula that reads the same cells: with `=SORT(A1:A3,1,-1)`
 * anywhere, `=A1:A3*2` comes out in the wrong order. Here it sorts a copy.
 */
export function repairSort(service: IFunctionService): void {
  amend(service, 'SORT', (shipped) => (array, ...rest) => {
    const given = asArray(array);
    return shipped(given === undefined ? array : copied(given), ...rest);
  });
}
